export { BackFromGym } from "./back-from-gym";
