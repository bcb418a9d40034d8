/** What stops a command though the content is sound: the machine, the browser, the settings of a run. Its message is told as it stands. */
export class BuildError extends Error {}
