### A class on the desk: its seats as a table, with a verdict for each.

desk-class-no-class = There is no class of this name.
# For those who hear the page. $title: of the class.
desk-class-grid = Seats of { $title }
desk-class-seats = The seats
desk-class-verdict = How it comes out
# Heads of columns, short.
desk-class-column = { $column ->
    [seat] Seat
    [kit] Kit
    [leafHeight] Leaf height
    [leafWidth] Leaf width
    [blockThickness] Thickness
    [leaves] Leaves
    [pageOneLeaf] Leaf of page 1
    [lastPage] Last page
    [plates] Plates
    [direction] Opens
    [height] Picture height
    [head] From the head
    [opening] Opening
    [pictureLeaves] Picture leaves
    [borderBefore] Border before
    [borderAfter] Border after
    [foldStyle] Folds
    [depths] Depths
    [lightDiameter] Light, width
    [lightHeight] Light, height
    [pace] Pace
   *[none] { $column }
  }
desk-class-all-columns = Show all columns
desk-class-add-seat = Add a seat
desk-class-keys = Arrow keys go from cell to cell. Type to write, Enter to keep, Escape to leave it as it was. Paste rows from a spreadsheet anywhere.
# Where lengths are written. $units: the class’s own.
desk-class-units = { $units ->
    [in] A bare number is in millimetres; write inches as 8 1/4 in.
   *[mm] A bare number is in millimetres.
  }
# How a seat comes out, in a word or two in its row.
desk-class-fits = Fits well
desk-class-check = Check first
desk-class-poor = Poor
desk-class-change = With a change
desk-class-no = Does not fit
desk-class-awaiting = No book yet
desk-class-wrong = To mend
desk-class-working = …
# Above what is told of the seat that the cell in use belongs to. $kit: its title.
desk-class-seat = Seat { $seat }
desk-class-seat-kit = Seat { $seat }: { $kit }
desk-class-seat-unnumbered = A row without a seat’s number
# In the place of the grid, until it is there.
desk-class-opening = The seats are being fetched …
# $kit: title of the kit that is drawn now, the one of this number; $of: how many kits the class has.
desk-class-waiting = Drawing the kits that the seats are judged by: { $kit }, { $there } of { $of } …
desk-class-none = There is no seat yet. Add one, or paste rows from a spreadsheet.
desk-class-told-fits = The book carries the kit well.
desk-class-told-check = The book carries the kit, but look at this first.
desk-class-told-poor = The kit comes out poorly in this book.
desk-class-told-change = As it is, the book does not carry the kit. One of these changes helps.
desk-class-told-no = The book does not carry the kit.
desk-class-told-awaiting = Write the figures of its book when it is there.
# $hours: a text.
desk-class-takes = It takes about { $hours }.
# Something wrong in a cell. $given, $allowed and $remedy are phrases.
desk-class-cell = { $column }: { $given }. Allowed: { $allowed }. To do: { $remedy }.
desk-class-pasted = { $cells ->
    [one] One cell was pasted.
   *[other] { $cells } cells were pasted.
  }
desk-class-not-pasted = What was pasted is no table. Copy rows of a spreadsheet, and try again.
# A class’s table that is no text. $file: its name.
desk-class-workbook = { $file } is a workbook, which the desk cannot write.
desk-class-workbook-do = Take its rows as { $csv }, put that beside it, and name it in “books”.
desk-class-take-csv = Take the rows as CSV
# A kit of the class that cannot be read.
desk-class-kit-away = The kit { $kit } cannot be worked out at present, so its seats are not judged.
