/** Every index.md of a class folder becomes a class page. */
export default { layout: "class.njk", tags: ["class"] };
