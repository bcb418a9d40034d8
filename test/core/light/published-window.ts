/** What the guide says of pattern.json's light and window, and of the rest that these tests read. */
export interface PublishedWindow {
  readonly book: {
    readonly leafHeight: number;
    readonly leafWidth: number;
    readonly blockThickness: number;
    readonly leaves: number;
    readonly direction: "ltr" | "rtl";
  };
  readonly levels: readonly { readonly name: string; readonly depth: number }[];
  readonly fit: {
    readonly firstLeaf: number;
    readonly lastLeaf: number;
    readonly opening: number;
    readonly spine: "flat" | "rounded";
    readonly view: "front" | "along";
    readonly head: number;
    readonly height: number;
    readonly width: number;
    readonly tipWidth: number;
    readonly holdWidth: number;
    readonly markStep: number;
    readonly leastTab: number;
  };
  readonly leaves: readonly {
    readonly leaf: number;
    readonly spans: readonly { readonly from: number; readonly to: number; readonly level: number }[];
    readonly cuts: readonly unknown[];
    readonly tacks: readonly { readonly from: number; readonly to: number }[];
  }[];
  readonly lostLeaves: readonly number[];
  readonly light: {
    readonly diameter: number;
    readonly height: number;
    readonly clearance: number;
    readonly setback: number;
    readonly floor: number;
    readonly centre: { readonly x: number; readonly z: number };
    readonly largest: { readonly diameter: number; readonly height: number };
    readonly notches: readonly {
      readonly leaf: number;
      readonly from: number;
      readonly to: number;
      readonly depth: number;
      readonly remaining: number;
    }[];
  };
  readonly insert: {
    readonly lip: number;
    readonly hinge: "left" | "right";
    readonly panel: "wrap" | "flat";
    readonly stringLength: number;
    readonly frameLength: number;
    readonly parts: readonly PublishedPart[];
  };
  readonly supplies: readonly PublishedSupply[];
}

type XY = readonly [x: number, y: number];

export interface PublishedPart {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly material: string;
  readonly count: number;
  readonly frame: "wrap" | "flat" | "own";
  readonly outlines: readonly (readonly XY[])[];
  readonly scores: readonly (readonly XY[])[];
  readonly marks: readonly { readonly line: readonly XY[]; readonly label: string }[];
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly perimeter: number;
}

export interface PublishedSupply {
  readonly kind: "material" | "tool";
  readonly id?: string;
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  readonly note: string;
  readonly price?: number;
}
