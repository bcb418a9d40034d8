/** Makes something of an object once, and keeps it for as long as the object is there: results never depend on what was made before. */
export function oncePer<Of extends object, Made>(make: (of: Of) => Made): (of: Of) => Made {
  const kept = new WeakMap<Of, { readonly made: Made }>();
  return (of) => {
    const found = kept.get(of) ?? { made: make(of) };
    kept.set(of, found);
    return found.made;
  };
}

/** The same where it also depends on something else, which `by` names: of each object those that were asked for last are kept, at most so many. */
export function lastPer<Of extends object, Made>(most: number): (of: Of, by: string, make: () => Made) => Made {
  const keptOf = oncePer((_: Of) => new Map<string, { readonly made: Made }>());
  return (of, by, make) => {
    const kept = keptOf(of);
    const found = kept.get(by) ?? { made: make() };
    kept.delete(by);
    kept.set(by, found);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return found.made;
  };
}
