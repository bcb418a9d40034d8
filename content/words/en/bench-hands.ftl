### For hands that are busy, on the page “Work along”: a mark on the maker's own ruler, the leaf read aloud, going on by a tap or a pedal.

## The ruler
# $at is a height such as 56.5 mm; on a line of her ruler, or between two.
bench-ruler-mark = Mark { $mark } of { $count }: { $at }, { $where ->
    [line] on a line
   *[between] between { $below } and { $above }
  }.
bench-ruler-note = Enlarged, not at true size: find the line on your own ruler.
bench-ruler-before = Mark before
bench-ruler-next = Next mark
# In the menu: how far the finest lines of her ruler are apart.
bench-ruler-finest = Finest lines of your ruler
bench-ruler-off = Do not show a ruler

## Reading aloud. The device's voice speaks these: no signs, short phrases.
bench-voice = Read each leaf aloud
bench-voice-again = Say again
# Told in the menu; R and M are keys.
bench-voice-keys = R says it again, M tells the next mark.
bench-heard-page = Page { $page }.
bench-heard-border = Border leaf.
bench-heard-marks = { $count ->
    [one] One mark
   *[other] { $count } marks
  } from the head, in { $units ->
    [in] inches
   *[mm] millimetres
  }.
bench-heard-cut = { $at }, cut { $cut }.
bench-heard-folds = Fold back and tuck behind, head to tail: { $folds }.
bench-heard-whole = No marks. Fold the whole leaf back at level { $level }, { $name }.
bench-heard-notch = Notch for the light: from { $from } to { $to }, { $depth } deep.
bench-heard-mark = Mark { $mark } of { $count }: { $at }, cut { $cut }.
# What lies above and below a mark; the numbers are levels.
bench-heard-beside = Above it fold back at level { $above }, below it at level { $below }.
# An inch length: $whole inches and a fraction such as “13 sixteenths”.
bench-heard-inches = { $whole } and { $fraction }
bench-heard-fraction = { $divisor ->
    [2] one half
    [4] { $parts ->
        [one] one quarter
       *[other] { $parts } quarters
      }
    [8] { $parts ->
        [one] one eighth
       *[other] { $parts } eighths
      }
    [16] { $parts ->
        [one] one sixteenth
       *[other] { $parts } sixteenths
      }
   *[32] { $parts ->
        [one] one thirty-second
       *[other] { $parts } thirty-seconds
      }
  }

## Going on
bench-hands-title = With busy hands
bench-tap = A tap anywhere goes on
bench-tap-undo = Undo
bench-pedal = Arrow keys tick, too
bench-pedal-lead = For a pedal that sends arrows. One that sends page keys needs nothing.
