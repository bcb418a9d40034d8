/** Makers of an object's properties. */
export type Makers<T> = { readonly [K in keyof T]: () => T[K] };

/** Gives an object (a new one where none is given) properties that are made when they are first asked for, once each: a page draws only what it shows. */
export function lazily<T extends object, U extends object = object>(makers: Makers<T>, onto: U = {} as U): T & U {
  const target = onto as T & U;
  for (const key of Object.keys(makers) as (keyof T)[]) {
    Object.defineProperty(target, key, {
      enumerable: true,
      configurable: true,
      get: () => {
        const value = makers[key]();
        Object.defineProperty(target, key, { value, enumerable: true });
        return value;
      },
    });
  }
  return target;
}

/** Makes a value when it is first asked for, once. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** The same for each name or number. */
export function onceEach<Name extends string | number, T>(make: (name: Name) => T): (name: Name) => T {
  const known = new Map<Name, () => T>();
  return (name) => {
    const one = known.get(name) ?? once(() => make(name));
    known.set(name, one);
    return one();
  };
}
