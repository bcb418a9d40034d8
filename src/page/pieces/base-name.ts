/** The device's storage of pieces. They are the device's, whatever site of this address they were begun on: a site that moves to another folder finds them. */
export const BASE_NAME = "leaflight";
