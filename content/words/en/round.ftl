### The view in the round: the whole book on a turntable, drawn by the browser.

round-fetching = Fetching the view …
round-close = Close the view
round-not-drawn = This browser cannot draw in three dimensions: WebGL is missing or off. The front picture above shows the same book.

## What the view shows
round-seen = Seen from { $around ->
    [front] the front
    [behind] behind
    [left] { $turn }° to the left
   *[right] { $turn }° to the right
  }{ $height ->
    [level] {""}
    [above] , { $tilt }° above
   *[below] , { $tilt }° below
  }{ $zoom ->
    [whole] {""}
   *[zoomed] , at { $near }%
  }.
round-opening = Opening { $opening }°{ $whose ->
    [own] , the kit’s own
   *[moved] {""}
  }.
round-width = { $measured ->
    [along] The picture is { $width } wide along its front
   *[front] The picture is { $width } wide
  }{ $shape ->
    [true] , its true shape.
    [wider] , { $share }% wider than true: a circle becomes a wide oval.
   *[narrower] , { $share }% narrower than true: a circle becomes a tall oval.
  }
round-resting = The folded leaves hold this book open to about { $degrees }° or more.
round-window = The window is cut for the kit’s own opening { $shown ->
    [misfit] and does not fit here.
   *[hidden] and is left out here.
  }
round-door = { $state ->
    [closed] closed
   *[open] open { $degrees }°
  }
# In the legend of colours: the level's number and name.
round-level = { $level } { $name }
