import { describe, expect, it } from "vitest";
import { reservedHost } from "../../../src/input/settings/reserved-host.ts";

// RFC 2606, "Reserved Top Level DNS Names", sections 2 and 3: .test, .example, .invalid, .localhost; example.com, .net, .org.
describe("reservedHost(url)", () => {
  it.each([
    ["https://example.org/library/", "example.org"],
    ["https://www.example.com/", "www.example.com"],
    ["https://EXAMPLE.net./", "example.net"],
    ["https://harbour.test/books/", "harbour.test"],
    ["http://localhost:8080/", "localhost"],
    ["https://a.b.invalid/", "a.b.invalid"],
    ["https://folds.example/", "folds.example"],
  ])("knows %s as nobody's", (url, host) => {
    expect(reservedHost(url)).toBe(host);
  });

  it.each(["https://my-example.org/", "https://example.org.uk/", "https://test.org/", "https://harbour.library/"])(
    "lets %s be somebody's",
    (url) => {
      expect(reservedHost(url)).toBeUndefined();
    },
  );
});
