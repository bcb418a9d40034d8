import { describe, expect, it } from "vitest";
import { isNetworkHost } from "../../../src/build/serving/network-host.ts";

/** Which names lead to a machine: its addresses (RFC 791, RFC 4291), and what it is called (RFC 6762 for .local); the form of Host: RFC 9110. */
describe("isNetworkHost(host, port, machine)", () => {
  it.each(["192.168.1.20:8080", "10.0.0.7:8080", "[fe80::1]:8080", "library:8080", "LIBRARY.local:8080"])(
    "takes %s",
    (host) => {
      expect(isNetworkHost(host, 8080, "Library")).toBe(true);
    },
  );

  it.each([
    "harbour.example:8080",
    "library.harbour.example:8080",
    "192.168.1.20.harbour.example:8080",
    "192.168.1.20:80",
    "192.168.1.20",
    "fe80::1:8080",
    "[harbour]:8080",
    "",
    undefined,
  ])("takes no %s", (host) => {
    expect(isNetworkHost(host, 8080, "Library")).toBe(false);
  });

  it("needs no port where it is the usual one, and knows a machine with a whole name by its first part", () => {
    expect(isNetworkHost("192.168.1.20", 80, "library")).toBe(true);
    expect(isNetworkHost("library.local:8080", 8080, "library.harbour.example")).toBe(true);
    expect(isNetworkHost("library.harbour.example:8080", 8080, "library.harbour.example")).toBe(true);
  });
});
