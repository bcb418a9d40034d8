export { libraryData as default } from "../page-data.ts";
