### What a teacher enters so that a seat's book carries its kit

# Before a line to paste.
teacher-entry = { $into ->
    [table] In place of the seat’s row in the table:
   *[matter] Below “seats:” in the class’s file:
  }
teacher-entry-note = Enter one of these lines, in place of what stands there of this seat, and build again.
