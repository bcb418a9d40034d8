import { describe, expect, it } from "vitest";
import { startOptions } from "../../../src/build/serving/start-options.ts";
import "../../english.ts";

describe("startOptions(words)", () => {
  it("reads ports and the network in any order", () => {
    expect(startOptions([])).toEqual({ port: undefined, deskPort: undefined, isOpenToNetwork: false });
    expect(startOptions(["--network", "--desk-port=9000", "--port", "8090"])).toEqual({
      port: 8090,
      deskPort: 9000,
      isOpenToNetwork: true,
    });
  });

  it.each([
    [["--ports", "8090"], "There is no option “--ports”."],
    [["--port", "8090", "--port", "8091"], "There is no option “--port”."],
    [["--port"], "“” is no port."],
    [["--desk-port", "70000"], "“70000” is no port."],
    [["--network=all"], "There is no option “--network=all”."],
  ])("refuses %j", (words, told) => {
    expect(() => startOptions(words)).toThrow(told);
  });
});
