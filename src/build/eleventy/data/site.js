export { siteData as default } from "../page-data.ts";
