export { Files } from "./files";
export { FileNotice } from "./file-notice";
