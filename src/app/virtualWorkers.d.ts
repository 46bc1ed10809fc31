declare module 'virtual:worker/*' {
  /** Address of a worker's program: a path of the sources, from the top of the repository. */
  export const workerUrl: string;
}
