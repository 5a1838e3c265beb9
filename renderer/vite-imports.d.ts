/** The address of a script that the bundler makes of a module, for a place that loads scripts by address. */
declare module "*?worker&url" {
  const address: string;
  export default address;
}
