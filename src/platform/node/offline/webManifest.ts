import { ICONS, mimeOf } from './icons.ts';

/** What the device is told of the program, in the words and colours of the page. */
export interface ProgramCard {
  readonly name: string;
  readonly description: string;
  readonly language: string;
  /** CSS hexadecimal. */
  readonly colour: string;
}

/**
 * The web app manifest (W3C, Web Application Manifest). Every address in it is relative, so that the program can lie under any
 * path of a plain file server.
 */
export function webManifest({ name, description, language, colour }: ProgramCard): string {
  const manifest = {
    name,
    short_name: name,
    description,
    lang: language,
    dir: 'ltr',
    id: './',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: colour,
    theme_color: colour,
    icons: ICONS.map((icon) => ({
      src: `./icons/${icon.file}`,
      type: mimeOf(icon),
      sizes: icon.pixels === null ? 'any' : `${icon.pixels}x${icon.pixels}`,
      purpose: icon.purpose,
    })),
  };
  return `${JSON.stringify(manifest, null, 1)}\n`;
}
