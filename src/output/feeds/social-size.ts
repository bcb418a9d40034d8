/** Size of a link preview's picture, pixels, as link previews expect it. */
export const SOCIAL = { width: 1200, height: 630 } as const;
