export { ImportText } from "./import-text";
