import fc from "fast-check";

/**
 * fast-check as every property test takes it, from here: with one seed, so that an ordinary run tests the same today and
 * tomorrow. LEAFLIGHT_SEED, a whole number, sets another, so that a nightly run can try others; a failure prints its seed.
 */
const stated = process.env["LEAFLIGHT_SEED"];
const seed = stated ? Number(stated) : 1;
if (!Number.isSafeInteger(seed)) throw new Error(`LEAFLIGHT_SEED is no whole number: ${stated}`);
fc.configureGlobal({ seed });

export { fc };
