export * from "./tree";
