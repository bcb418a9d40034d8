import fc from "fast-check";
