/** The folder of a host that sites are built for and served from. */
export const FOLDER = "quay/folds";
export const ADDRESS = `https://folds.example.org/${FOLDER}/`;
