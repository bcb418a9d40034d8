/** The library’s own file that holds all of it: its many modules take far longer to load. */
declare module "colorjs.io/dist/color.js" {
  export { default } from "colorjs.io";
}
