import { bindOffline } from "./offline-page.ts";

/** Script of every page that can be kept. From the disk there is no worker, and nothing is missing: every file is there. */
const script = document.currentScript as HTMLScriptElement;
if (/^https?:$/.test(location.protocol)) bindOffline(new URL("../../", script.src));
