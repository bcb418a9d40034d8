/** YAML that cannot be taken as it stands; whoever knows the file gives it a place there. */
export class YamlFault extends Error {
  /** Characters before the fault. */
  readonly offset: number;

  constructor(offset: number, given: string) {
    super(given);
    this.offset = offset;
  }
}
