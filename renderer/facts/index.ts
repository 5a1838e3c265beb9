export { Facts } from "./facts";
export { factsSentence } from "./facts-sentence";
