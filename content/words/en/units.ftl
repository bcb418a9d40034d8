### Symbols of units and how lengths, angles and durations are written. The unit's symbol follows a no-break space.

unit-mm = mm
unit-degree = { $degrees }°
unit-percent = { $share }%
