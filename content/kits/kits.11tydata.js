/** Every index.md of a kit folder becomes a kit page; its pattern is looked up by slug in the layout. */
export default { layout: "kit.njk", tags: ["kit"] };
