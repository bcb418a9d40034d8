### The page that a teacher has open in the room: what is projected, the list of seats, and the slips that go home.

room-title = { $title }: in the room
room-ways = Parts of this page
room-link = In the room: to project, to tick off, to take home
room-show = For the screen
room-seats = Seats
room-home = Slips to take home

room-own-sizes = Sizes in the pictures are of the kit’s own book: every seat’s stand in its packet.

room-session = Session
room-begin = Begin now
room-timer = Timer, minutes
room-timer-start = Start timer
room-timer-stop = Stop timer
room-timer-over = Time is up
room-previous = Step before
room-next = Next step
room-full = Full screen
# $number is the step's, of as many.
room-step = { $kit }, step { $number } of { $of }
# $when is the session's pause or its end.
room-targets = { $when ->
    [pause] By the pause
   *[end] By the end
  }
# Short, as it is read from the last row. $at: what a seat is working on.
room-target = { $at ->
    [scores] score lines
    [parts] window
   *[finished] finished
  }
room-target-scored = lines done

# What a session is in the middle of, and until when: "Work at the book until 19:40, 14 min left".
room-stretch = { $kind ->
    [settle] Settling in
    [pause] Pause
    [catch-up] Time to catch up
    [tidy] Tidying up
   *[work] Work at the book
  } until { $until }: { $left } left
room-before = Begins at { $time }
room-after = This session is over
room-unbegun = Not begun

# $session is its title.
room-here = Here: { $session }
room-up-to = Folded up to page
room-finished = Finished
room-left = Left
room-seats-note = Tick who is here, and write the last page that is folded. This device alone keeps it, by seat numbers.
room-noscript = With JavaScript, this page keeps the list. Without it, use the supervision list of the teacher’s packet.
room-not-kept = This browser keeps nothing: what is ticked here is lost when the page is closed.
room-clear = Empty the list
room-clear-sure = Empty the whole list of this class? Nobody else has it.
room-seat-here = Seat { $seat } is here: { $session }
room-seat-page = Seat { $seat }: folded up to page
room-seat-finished = Seat { $seat } is finished
# $time is an estimate: "about 2 h".
room-rest = { $leaves ->
    [0] no leaves, { $time }
    [one] one leaf, { $time }
   *[other] { $leaves } leaves, { $time }
  }
room-rest-from = { $leaves ->
    [one] one leaf, page { $page }; { $time }
   *[other] { $leaves } leaves, from page { $page } on; { $time }
  }
room-rest-none = nothing: it is finished
# $percent is one, with its sign. How many seats are here in the session that is shown, and how far they are together.
room-sum = { $here ->
    [0] No seat is ticked as here
    [one] One seat is here
   *[other] { $here } seats are here
  }; { $finished ->
    [0] none is finished
    [one] one is finished
   *[other] { $finished } are finished
  }. Together the class has done { $percent }.

room-home-note = What the list above knows is filled in; the rest is a line to write on. Print this page: only the slips are printed.
room-print = Print the slips
room-slip-whole = The whole piece has { $leaves ->
    [one] one leaf
   *[other] { $leaves } leaves
  } to fold and takes { $time } in all.
room-slip-take = { $light ->
    [lit] Take along: book, gauge, packet, and the parts in your bag. No loose blades go home, and cells stay behind their screwed door.
   *[plain] Take along: book, gauge, packet, and the parts in your bag. No loose blades go home.
  }
room-slip-take-folded = Take along: book, corner gauge, packet, and the card in your bag.
