/** The address of a script that the bundler makes of a module, for a place that loads scripts by address. */
declare module "*?worker&url" {
  const address: string;
  export default address;
}

/** A script that runs in a thread of its own, made of a module. */
declare module "*?worker" {
  const Thread: new () => Worker;
  export default Thread;
}
