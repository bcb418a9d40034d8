### What a teacher prints and bags for a class: the print plan, and what lies in each seat's bag.

papers-plan = Print plan
papers-plan-lede = In this order. Pages are counted from the files.
papers-plan-uncounted = Pages are counted when the site is built with its PDFs. Build the site to see them.
papers-file-head = File
papers-copies-head = How often
papers-pages-head = Pages
papers-sheets-head = Sheets
papers-cost-head = Cost
# What each file is.
papers-measuring-card = measuring card; cut each sheet in two
papers-teacher = your packet, with handouts and seat cards
papers-to-read = what seats read and work by, each seat from a front side
papers-to-cut-out = gauges, strips and templates of all seats; its card is not in the shopping list
papers-times = { $copies } ×
# $sheets of paper or card.
papers-sheets = { $stock ->
    [card] { $sheets ->
        [one] one sheet of card
       *[other] { $sheets } sheets of card
      }
   *[paper] { $sheets ->
        [one] one sheet of paper
       *[other] { $sheets } sheets of paper
      }
  }, { $sides ->
    [both] both sides
   *[single] one side
  }
papers-all = Together
papers-all-sheets = { $paper } sheets of paper, { $card } of card
papers-no-price = State your price for a printed side as prices: page, and the cost stands here.
papers-scale = Print at 100% (“actual size”). Check the 100 mm bar on the first sheet before you print the rest.
# $file is the name of a file.
papers-by-hand = Do you cut by hand? { $file } has the cut sheets at true size. Print its sheets on your card, or lay them over acetate.

papers-bags = What lies in each bag
papers-bags-part-head = Parts, and the cut sheets that they come from
# $sheets are names of sheets.
papers-bag-part = { $part } ({ $sheets })
papers-bag-part-many = { $count } × { $part } ({ $sheets })
papers-bag-no-sheet = no sheet is large enough
papers-bag-gauge-with = The gauge is in the bag of seat { $seat } and goes round.
# $seats: "seats 1, 3 and 4".
papers-gauge-round = One gauge serves { $seats }: their lines are the same. Cut more of it where they press lines at the same time.
# Of the card for gauges among the cut parts.
papers-gauge-card = The cut card for a gauge is plain: glue a printed gauge onto it, or prick its dots through. Gauges printed on card need none.
# How many packs of how many.
shopping-packs = { $count ->
    [one] one pack of { $size }
   *[other] { $count } packs of { $size }
 }

# $plan and $read are links.
private-plan = { $plan }: what to print how often, in order, with sheets and cost. { $read }.
# $read and $cut are links: class-to-read and class-to-cut-out.
class-parted-packets = The same in two: { $read }, { $cut }.
class-to-read = what seats read, for both sides
class-to-cut-out = what is cut out, for card
class-cut-sheets-pdf = Cut sheets at true size, for a knife
