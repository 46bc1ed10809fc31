import { pathToFileURL } from 'node:url';

/** Whether the process was started with this module (`import.meta.url`): one that works beside it may be read as well. */
export function startedAs(module: string): boolean {
  const [, script] = process.argv;
  return script !== undefined && pathToFileURL(script).href === module;
}
