### A class's page and its seats' pages. A class is an event where several people fold, each at a numbered seat with a book of her own.

class-over = Class
# The day and the place of a class.
class-when = { $date }, { $place }
class-contents = On this page
class-bring = What to bring
class-fits = Does my book fit?
class-schedule = Schedule
class-seats = Seats
class-cautions = Cautions

class-bring-book = A book nobody will miss
class-bring-book-note = Its pages are numbered and its leaves are not shiny. Measure it as the card says, and try it below.
class-bring-measurements = Its measurements
# $card and $pdf are links.
class-bring-measurements-note = Write them on the { $card } ({ $pdf }).
class-measuring-card = measuring card
class-measuring-card-pdf = PDF to print
class-row = Tell your teacher
class-row-noscript = With JavaScript, this page writes your book as a row for the teacher’s table. Without it, hand in the measuring card.
class-row-lead = When your book is measured, give this row to your teacher, who puts it into the table of books. The page sends nothing.
class-row-line = Row for the table of books
# $columns: names of columns, as they stand in the table.
class-row-columns = Its columns: { $columns }. Lengths are in millimetres.
class-row-way = How you make the leaves
class-row-way-kit = As the kit is made
class-row-way-corner = Without a knife
class-row-pace = How fast you work
class-row-pace-class = As the class plans
# $times: how many times the kit's estimate.
class-row-pace-own = { $kind ->
    [practised] Practised ({ $times } ×)
    [slower] Slower ({ $times } ×)
   *[slowest] Much slower ({ $times } ×)
  }
# How long the work takes in the class, with what the teacher has ready.
class-row-finished = About { $hours } of work at this pace: it will be finished here.
class-row-unfinished = About { $hours } of work at this pace: about { $rest } is left to finish at home.
class-row-misfit = { $kit } does not fit this book as it is. See above what would help; your teacher decides with you.
class-row-pages = Add the leaf of page 1 and the last page, so that page numbers are right.
class-row-code = Your teacher’s phone reads the row from this code.
class-row-code-alt = The row as a code for a phone
class-row-copy = Copy the row
class-row-save = Save it as a file
class-row-missing = Enter the height, width, thickness and leaves of your book above, and correct what is marked. Then the row stands here.
class-row-copied = The row is copied.
class-row-selected = The row is selected: copy it as you copy other text.
class-noscript = With JavaScript, this page tells you at once whether a book fits. Without it, compare your book with what each kit’s page asks for.

# Heads of the table of sessions.
class-session = Session
class-session-when = When
class-session-length = Length
class-session-work = At the book
class-session-time = { $date }, { $clock }
class-session-day = { $session }, { $date }
class-reaches = Where each seat should be at the end of each session
class-seat-head = Seat
class-work-head = Work
class-schedule-note = Each seat’s page says where it should be when a session ends. It is a guide: nobody has to keep up with it.

# Beside a seat that folds corners instead of cutting.
class-seat-folded = without a knife
class-seat-pattern = Pattern
class-seat-bench = Work along
class-seat-packet = Packet
# How far a class is. $books is how many of its $seats have a book.
class-state = { $state ->
    [announced] { $seats ->
        [one] One seat is waiting for a book.
       *[other] { $seats } seats are waiting for a book.
      }
    [collecting] { $books } of { $seats } seats have their book.
    [held] This class is over. Patterns and packets stay here, so that every piece can be finished.
    [closed] This class is over.
   *[fitted] Every seat has its book.
  }
# Of a seat without a book.
class-book-to-come = Book to come
# Of a seat whose packet is not there yet.
class-seat-to-come = Pattern to come
class-seats-note = Seats have numbers only. Nothing about anyone is kept here.

class-teacher-packet = Teacher’s packet
class-all-packets = All seats’ packets, to print
class-teacher-read = Read it here
# $files is a list of links.
class-cut-files = Cut files for the whole class: { $files } (SVG in mm; DXF and 72 dpi beside them).

## The page of papers that only teachers have

private-title = For teachers
private-lede = These papers are yours alone. They stand in the folder private; leave it out when you publish the site.
# $packet and $read are links.
private-teacher = { $packet }: roster, shopping list, costs, preparation, cut sheets, schedule, supervision list, handouts and seat cards. { $read }.

## A seat's book in a line: these facts are joined as a list

class-book-sides = { $height } × { $width }
class-book-leaves = { $leaves ->
    [one] one leaf
   *[other] { $leaves } leaves
 }
class-book-thick = { $thickness } thick
class-book-right-to-left = reads right to left
class-book-plates = { $plates ->
    [one] one plate
   *[other] { $plates } plates
 }

## A seat's page

seat-number = Seat { $seat }
# $numbers is a list of seats' numbers; $count says how many they are.
seat-numbers = { $count ->
    [one] seat { $numbers }
   *[other] seats { $numbers }
 }
seat-title = Seat { $seat }: { $class }
# $book is the book in a line: "178 × 110 mm, 96 leaves, 9.5 mm thick".
seat-lede = { $kit }, in this book: { $book }.
seat-awaiting = The book for this seat is still to come.
# $class is a link, the class’s title; $card is one, class-measuring-card.
seat-awaiting-help = Choose a book, measure it as the { $card } says, and try it on the page of { $class }.
seat-folded = This seat works without a knife: its leaves are folded by their corners.
seat-front-alt = { $kit } as it comes out in this book, seen from the front
seat-hold-width = Hold width
seat-hold-width-note = between the folded edges of the first and last picture leaf, at the head
seat-opening = Opening
seat-opening-note = angle of the opened book, first leaf to last
seat-leaves = Folded leaves
seat-leaves-note = { $cuts ->
    [one] one cut
   *[other] { $cuts } cuts
 }, { $folds ->
    [one] one fold
   *[other] { $folds } folds
 }
# The same of a seat without a knife.
seat-leaves-folded = no cut, { $folds ->
    [one] one fold
   *[other] { $folds } folds
 }
seat-work = Work
# $difficulty is easy, moderate or demanding.
seat-work-note = { $difficulty }; a guide, at this seat’s pace
seat-bench = Work along, leaf by leaf
seat-packet = Packet to print ({ $paper })
seat-pattern = Pattern page for this book
seat-csv = Pattern as CSV
seat-doubts = Before you begin
seat-cut-files = Cut files for the window
seat-misfit = This picture does not fit this book yet
seat-help = What would help
# $kit is another kit of the class.
seat-other-fits = Choose { $kit } instead: it fits as it is.
# $offer is one change that makes the other kit fit: "Make the picture 105 mm tall".
seat-other-change = Choose { $kit } instead. { $offer }.
# $book is what the teacher calls a substitute book.
seat-spare = Take the book “{ $book }” from the crate: it fits as it is.
seat-reaches = At the end of each session
# A code that a phone reads.
seat-code = Code for seat { $seat }: { $url }

## Where a seat should be when a session ends

reach-finished = finished
reach-scores = pressing score lines
reach-scored = score lines pressed
reach-window = all { $all } leaves folded, working on the window
# $leaf is the last folded leaf: "leaf 48, p. 87".
reach-leaf = { $leaves } of { $all } leaves, up to { $leaf }

# When a session begins and ends: "18:30 to 21:00".
clock-from-to = { $from } to { $to }
