# Every text of the app, in English. A piece is one breast.

## Names and small words
piece = Piece { $number }
pieces = Pieces { $numbers }
unit-f = °F
unit-c = °C
unit-g = g
unit-oz = oz
unit-mm = mm
unit-in = in
minutes = { $count } min
hours-minutes = { $hours } h { $minutes } min
ago = { $span } ago
just-now = just now
list-and = { $first } and { $last }
back = Back
undo = Undo
change = Change
today = Today
tomorrow = Tomorrow

## Stages
stage-raw = Raw
stage-resting = Resting, not proved
stage-proved = Proved
stage-packed = Served or packed

## Tabs
tabs = Parts of the app
tab-cook = Cook
tab-rest = Rest
tab-log = Log
tab-more = More

## Start
start-title = Pull Order
start-lead = Each breast is done at its own moment. Set them out, type what your thermometer says, and pull each one in its turn.
start-new = New cook
start-continue = Go on with this cook
start-earlier = Earlier cooks
start-caution = A forecast never shows that chicken is safe. Only your thermometer does.
cook-begun = Cook of { $when }

## Set-out
set-out-title = Set out
set-out-add-title = Add pieces
set-out-count = How many alike
set-out-count-less = One fewer
set-out-count-more = One more
set-out-weight = Weight each ({ $unit })
set-out-thickest = Thickest part ({ $unit })
set-out-thickest-hint = Height as it lies. Leave blank if not measured; a measured piece is forecast much better.
set-out-start = Temperature going on ({ $unit })
set-out-shape = Cut
shape-natural = Natural
shape-even = Pounded
shape-thick = Very thick
set-out-add = { $count ->
    [one] Add 1 piece
   *[other] Add { $count } pieces
 }
set-out-remove = Take { $piece } away
set-out-facts = { $weight }, { $thickest } thick
set-out-facts-weight = { $weight }
set-out-cook-title = This cook
set-out-pit = Pit at the rack ({ $unit })
set-out-pull = Pull at ({ $unit })
set-out-pull-hint = Before 165 °F (74 °C): the core rises a little more after the pull.
set-out-ambient = Air where it rests ({ $unit })
set-out-dinner = Dinner at
set-out-dinner-clear = No set time
set-out-put-on = { $count ->
    [one] Put the piece on
   *[other] Put all { $count } on
 }
set-out-units = Units
units-customary = °F · oz · in
units-metric = °C · g · mm
set-out-wash = Wash your hands, board and thermometer after raw chicken.

## Messages beside a field
bad-blank = Nothing is typed yet. Type a number such as { $example }.
bad-number = This is not a number. Type digits, with at most one decimal point or comma, such as { $example }.
bad-comma = 1,234 can be read two ways. Type 1234 or 1.234.
bad-range = Between { $low } and { $high } is accepted.
bad-dinner-past = { $time } today has passed. Pick a later time, or choose Tomorrow.
bad-dinner-blank = Pick a time, or choose No set time.
bad-not-on = { $piece } is not on the pit yet. Put it on first; what you typed stays here.
bad-packed = { $piece } is served or packed, so it takes no more readings. Undo that in the log first.

## Live cook
live-title = Cook
live-due-now = Now
live-all-done = All pieces are served or packed.
live-order = Pull order
live-off = Off the pit
live-dinner = Dinner { $time }
live-dinner-late = { $span } late
live-dinner-early = { $span } early
live-dinner-on-time = on time
live-no-dinner = No dinner time
live-no-dinner-hint = set one
live-then = Then { $time }: { $what }
live-then-now = Then: { $what }
live-pit = Pit { $temperature }
live-pit-none = Pit not read
live-pit-aim = set for { $temperature }
live-core-now = core now, forecast
live-core-band = { $low }–{ $high }
live-pull-window = Pull { $window }
live-pull-far = No pull time yet
live-no-reading = No reading yet
live-read-instant = Read { $temperature }, { $age }
live-read-leave-in = { $temperature } leave-in, { $age }
live-peak = Peak about { $temperature } at { $time }
live-proved-by = Proved: { $temperature } read at { $time }
live-misplaced = The leave-in is probably not in the coldest spot, about { $length } off.

## What to do next
do-pull = Pull { $pieces }
do-check = Check { $pieces }
do-cover = Cover { $pieces } with loose foil
do-second-place = Try a second place in { $pieces }
do-prove = Read { $pieces } to prove it
do-put-back = Put { $pieces } back on
do-reseat = Re-seat the leave-in of { $pieces }
do-read-pit = Read the pit
do-put-on = Put { $pieces } on
do-set-out = Set out the pieces
do-pack = Serve or pack { $pieces }

do-out-of-fridge = Take the meat from the fridge
do-season = Season the pieces
do-light-fire = Light the fire
do-feed-fire = Feed the fire

why-chore = So that dinner is on time.
why-pull = The reading reached the pull temperature.
why-check = Thickest part, lowest of two places.
why-cover = Loose foil keeps the heat without steaming.
why-second-place = One place alone does not prove it. The lowest of two counts.
why-prove = Near its peak: thickest part, lowest of two places.
why-put-back = The peak has passed and no reading proves it.
why-reseat = Push it to the middle of the thickest part.
why-read-pit = Not read for a while.
why-put-on = Raw and set out.
why-set-out = Weigh each one.
why-pack = Proved by its reading.

act-read = Read { $piece }
act-pulled = { $piece } is off
act-covered = { $pieces } covered
act-second-place = Second place reads no lower
act-put-back = { $piece } is back on
act-reseated = Leave-in re-seated
act-read-pit = Type the pit reading
act-put-on = Put { $pieces } on
act-set-out = Set out pieces
act-packed = { $pieces } served or packed
all-pieces = all { $count }

## Reading pad
pad-title-pit = Pit
pad-about = Forecast { $temperature }, { $low } to { $high }
pad-pit-about = Set for { $temperature }
pad-instrument = Thermometer
instant-read = Instant-read
leave-in = Leave-in
places-two = Lowest of two
pad-typed = Reading in { $unit }
pad-store = Store reading
pad-delete = Delete the last digit
pad-decimal = Decimal mark
pad-keys = Number pad
ask-reading = { $piece }: { $typed }? It was expected near { $expected }.
ask-keep = { $typed } is right
ask-mend = Type it again
pad-pull = Pull { $piece }
pad-put-on = Put { $piece } on
pad-reseat = Leave-in seated here

## Plan
plan-title = Plan
plan-no-pieces = Set out at least one piece first.
plan-no-dinner = Set a time for dinner, and the day is planned back from it.
plan-dinner-past = Dinner time has passed. Set another one.
plan-never-done = The pit is too cool for this pull temperature. Set it hotter, or pull lower.
plan-legend = Bar: on the pit. Box: pull window, four chances in five. Dot: rested.
plan-dinner-mark = Dinner
plan-now-mark = Now
plan-eat = Dinner
plan-on = { $piece } goes on
plan-pull = { $piece } comes off, likely { $window }
plan-rested = { $piece } has rested
plan-ready = Ready { $window }. By { $time }: { $chance }.
plan-style = How to load
plan-on-together = All on at once
plan-off-together = All off at once
plan-cost = Waits { $held } in all · lid opened { $openings ->
    [one] once
   *[other] { $openings } times
 } · fire { $fuel } · ready in time { $chance }
plan-calendar = Save the plan for my calendar
plan-calendar-hint = The phone's own calendar rings even when this page is closed.
pit-low = The pit reads { $temperature } and is not climbing back.
pit-high = The pit reads { $temperature } and is not settling.
pit-recovering = The pit reads { $temperature } and is climbing back.
pit-settling = The pit reads { $temperature } and is settling.
lever-raise = Raise the pit to { $temperature }
lever-lower = Lower the pit to { $temperature }
lever-first = Serve { $pieces } first
lever-dinner = Eat at { $time }
lever-sooner = Dinner { $span } sooner; the outside drier
lever-later = Dinner { $span } later; the outside less dry
lever-first-ready = Those ready at { $time }; in time { $chance }
lever-chance = In time { $chance }
lever-choose = Do it
unit-min = min

## Habits
habits-title = Pit, rack and times
habits-pit = Kind of pit
pit-indirect = Wood or charcoal to one side
pit-pellet = Pellets with a fan
pit-gas = Gas to one side
pit-drum = Upright drum
habits-times = How long things take
habits-times-hint = In minutes. Feeding 0 means the pit feeds itself.
habits-preheat = Fire lit to pit hot (min)
habits-feed = Feed the fire every (min)
habits-fridge = Out of the fridge before (min)
habits-season = Seasoning (min)
habits-rest = Rest under foil (min)
habits-carve = Carving and sides (min)
rack-title = Places on the rack
rack-any = Everything fits, and heats alike.
rack-count = { $count ->
    [one] One piece fits.
   *[other] { $count } pieces fit at once.
 } More go on in waves. Tap a place that is hotter or cooler than the rest.
rack-fewer = One place fewer
rack-more = One place more
rack-place = { $number }: { $heat }
rack-even = even
rack-hot = hot
rack-cool = cool
tonight-title = For tonight
tonight-hint = Dinner waits for these only. Tap a piece to change it.
tonight-is = { $piece }: tonight
tonight-is-not = { $piece }: later

## Rest
rest-title = Rest
rest-none = Nothing is off the pit yet.
rest-lead = Resting is not proof. A reading of { $rule } or more in the thickest part, the lowest of two places, proves a piece.
rest-off = Off { $age }
rest-covered = covered
rest-uncovered = not covered
rest-cover = Cover
rest-read = Read
rest-second = Second place reads no lower
rest-pack = Served or packed
rest-put-back = Back on the pit

## Log
log-title = Cook log
log-empty = Nothing has happened yet.
log-undo = Undo: { $what }
log-bring-back = Bring back: { $what }
log-bring-back-short = Bring back
log-undone = Undone
log-ignored = Not counted: { $why }
log-set-aside-title = Could not be read
log-set-aside-lead = These stored entries are kept as they were found and change nothing.

entry-pit-target = Pit set for { $temperature }
entry-ambient = Air where it rests { $temperature }
entry-dinner = Dinner at { $time }
entry-dinner-none = No set time for dinner
entry-pull-target = Pull at { $temperature }
entry-pull-target-piece = { $piece }: pull at { $temperature }
entry-proof-rule = Proved at { $temperature }
entry-set-out = { $piece } set out: { $facts }
entry-taken-away = { $piece } taken away
entry-put-on = { $piece } on
entry-pit-read = Pit reads { $temperature }
entry-read-instant = { $piece } reads { $temperature }, instant-read
entry-read-leave-in = { $piece } reads { $temperature }, leave-in
entry-read-two = { $reading }, lowest of two
entry-second-place = Second place no lower
entry-second-place-piece = { $piece }: second place no lower
entry-vouched = Reading said to be right
entry-seated = Leave-in seated in { $piece }
entry-lid = Lid open { $span }
entry-pulled = { $piece } off
entry-covered = { $piece } covered
entry-packed = { $piece } served or packed
entry-out-of-fridge = Meat is out of the fridge
entry-season = Seasoned
entry-light-fire = Fire is lit
entry-feed-fire = Fire is fed
entry-pit-kind = Kind of pit told
entry-rack = Rack places told
entry-habits = Times around the cook told
entry-style = Way of loading chosen
entry-tonight = { $piece } is for tonight
entry-later = { $piece } is for later
entry-tolerances = Thermometer tolerances told
entry-check-risk = Risk at a check chosen
entry-thermometer = Thermometer checked
entry-clock-jumped = The phone's clock jumped
entry-undone = Undone: { $what }
entry-other = Another entry

problem-unknown-piece = that piece was not set out
problem-not-on-yet = the piece was not on the pit yet
problem-already-on = the piece was on the pit already
problem-already-off = the piece was off the pit already
problem-already-packed = the piece was served or packed already
problem-unknown-reading = the reading is not there any more
problem-too-late = it came too long after the reading
problem-impossible-value = its value is not possible
problem-other = it makes no sense there

## Alarms
alarms = Alarms
alarm-check = Check { $piece }
alarm-window = { $piece }: pull soon
alarm-past = { $piece }: likely past its pull temperature
alarm-prove = { $piece }: read it to prove it
alarm-rested = { $piece } has rested
alarm-chill = { $piece }: portion, bag and chill soon
alarm-warm-up = { $piece } warms too slowly: it must pass 140 °F (60 °C) soon
alarm-other = The cook calls for you
alarm-late = Due { $span } ago
alarm-snooze = In 5 min
alarm-done = Heard

## Curves
curves-title = Curves
curves-none = Nothing is on the pit yet.
curves-next = {" "}· next
zoom = How much is shown
zoom-whole = Whole cook
zoom-hour = 1 hour
zoom-half-hour = 30 min
curve-pull = At { $temperature } likely { $window }
curve-readings = { $count ->
    [0] No reading yet
    [one] 1 reading
   *[other] { $count } readings
 }
curve-pit = Read { $temperature } at { $time }, set for { $aim }.
curve-pit-none = Not read yet, set for { $aim }.
section-legend = Cut through the thickest part: the cross is the coldest spot, the line is the leave-in.

## Demo, new version, files
demo-title = Demo at 60 times speed
demo-leave = Leave
start-demo = Watch a demo cook
version-title = A new version is ready.
version-take = Use it
version-later = Later
file-save = Save this cook as a file
file-open = Open a cook from a file
file-saved = Saved as { $name }.
file-refused = The phone did not take the file.

## Storage trouble
trouble-storage = This phone did not store the last entry. The cook goes on, but keep this page open.

## More, settings
more-title = More
settings-title = Settings
settings-temperature = Temperature
settings-weight = Weight
settings-length = Thickness
settings-look = Look
look-light = Light
look-dark = Dark
look-sun = Sun
look-auto = As the phone
settings-hand = Hand
hand-right = Right
hand-left = Left
settings-language = Language
language-en = English
language-es = Español
more-set-out = Set out and plan
more-cautions = Cautions
more-settings = Settings
more-end = Leave this cook
more-new = New cook

## Cautions
cautions-title = Cautions
cautions-1-title = Only readings prove
cautions-1 = A forecast tells you when to look. It never shows that a piece is safe. Poultry is safe at once at { $rule } in the thickest part (FDA Food Code 2022, 3-401.11; USDA advice).
cautions-2-title = Every piece, two places
cautions-2 = Read every piece by itself, in at least two places of the thickest part. The lowest one counts.
cautions-3-title = Clean hands, clean thermometer
cautions-3 = Wash hands, board and thermometer between raw and cooked. Clean the probe after each reading of an underdone piece. Use a clean plate at the pull.
cautions-4-title = Your rules come first
cautions-4 = Local food codes come before anything here, and so do the thermometer maker's instructions. Check the thermometer in ice water and boiling water.
cautions-5-title = Take more care for some
cautions-5 = Young children, pregnant women, older people and people with weak immune systems are hurt sooner. When in doubt, cook further.
cautions-6-title = What this app cannot know
cautions-6 = It knows only what you type. The forecast comes from a heat model with its own errors; wind, an odd shape or a wrong weight can put it off.

## Alarms on this phone
more-alarms = Alarms on this phone
on = On
off = Off
alarms-title = Alarms on this phone
alarms-lead = With this page in front and the screen on, every alarm comes on time. With another app in front, or the screen off, the phone may stop the page within a minute or sooner. What you missed then comes the moment you look again, and says how late it is.
alarms-backup = When you leave the pit, set the phone's own timer as well.
alarms-notify-not-offered = This browser shows no notifications for this page. On an iPhone they need the app on the home screen.
alarms-notify-not-asked = A notification shows an alarm over other apps, with snooze and done, as long as the phone lets this page run.
alarms-notify-ask = Allow notifications
alarms-notify-granted = Notifications are allowed.
alarms-notify-refused = Notifications are refused. The phone's settings for this page can change that.
alarms-awake = This phone can keep the screen on while a piece is on the pit. A low battery may stop that.
alarms-not-awake = This browser cannot keep the screen on. Set the phone's own screen time to long.
alarms-install = On the home screen the app is kept safer and may do more.
alarms-try = Test my alarms
alarms-trying = Testing…
alarms-trial-title = Test alarm
alarms-trial-snooze = Snooze
alarms-trial-done = Done
alarms-trial-body = This is how an alarm looks.
alarms-sound = Sound
alarms-stay-awake = Keep the screen on
tried-sound = A tune was played. If you did not hear it, turn the phone's volume up.
tried-no-sound = The browser allowed no sound.
tried-vibration = The browser said it would vibrate. Not every phone does.
tried-no-vibration = This phone does not vibrate for web apps.
tried-notification = A notification was shown.
tried-no-notification = No notification was shown.
tried-awake = The screen can be kept on.
tried-not-awake = The screen cannot be kept on now.
tried-kept = The browser promised to keep what is stored.
tried-not-kept = The browser did not promise to keep what is stored. Export the cook to be sure.
tried-installed = The app runs from the home screen.
tried-not-installed = The app runs in a browser tab.

## Prompts, proposals, what a reading lacks
prompts = Clean hands, clean tools
prompt-probe = Clean the probe before the next piece.
prompt-plate = Take a clean plate for what comes off.
prompt-done = Done
proposal = Pull temperature
proposal-higher = Pulled at { $chosen }, this piece may not reach its proof in the rest. { $lowest } would, by the forecast.
proposal-lower = You pull at { $chosen }. By the forecast { $lowest } is enough for the rest to prove it.
proposal-use = Pull at { $lowest }
short-before = That reading was taken before the piece last went on.
short-packed = That reading was typed after the piece was served or packed.
short-late = That reading was typed too long after it was taken.
short-copied = The same reading was typed for another piece at the same moment.
short-leave-in = A leave-in alone proves nothing. Read with the instant-read.
short-too-fast = No piece warms that fast. Read it again.
short-doubted = That reading fits nothing else. Say if it is right, or type it again.
short-contradicted = A later reading found a colder spot.
short-one-place = Read in one place only. Try a second one.
entry-prompt = Cleaning prompt done
entry-prompts = Cleaning prompts switched
