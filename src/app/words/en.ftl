# Every text of the app, in English. A piece is one breast.

## Names and small words
piece = Piece { $number }
pieces = Pieces { $numbers }
the-piece = Piece { $number }
the-pieces = Pieces { $numbers }
the-time = { $hour ->
   *[other] { $time }
 }
unit-f = °F
unit-c = °C
unit-g = g
unit-oz = oz
unit-lb = lb
unit-mm = mm
unit-in = in
minutes = { $count } min
hours-minutes = { $hours } h { $minutes } min
ago = { $span } ago
just-now = just now
list-and = { $first } and { $last }
span-of = { $first } to { $last }
back = Back
undo = Undo
redo = Redo
change = Change
today = Today
tomorrow = Tomorrow

## Stages
stage-raw = Raw
stage-resting = Resting, not proved
stage-proved = Proved
stage-packed = Served or bagged

## Tabs
tabs = Parts of the app
tab-cook = Cook
tab-rest = Rest
tab-log = Log
tab-more = More

## Start
start-title = Pull Order
start-lead = Every boneless, skinless breast gets done at its own time. Add your pieces and type what your thermometer says: it tells you when to check and pull each one.
start-new = New cook
start-continue = Back to this cook
start-earlier = Earlier cooks
start-caution = A forecast never shows that chicken is safe. Only your thermometer does: a piece is proved once it reads { $rule } or more in the thickest part, the lowest of two spots.
cook-begun = Cook of { $when }
cook-pieces = { $count ->
    [0] No pieces
    [one] 1 piece
   *[other] { $count } pieces
 }
cook-raw = { $count } raw
cook-on = { $count } on the pit
cook-off = { $count } off the pit
cook-packed = { $count } served or bagged
cook-all-packed = all served or bagged
new-cook-ask = Start another cook?
new-cook-on = On the pit: { $pieces }.
new-cook-resting = Resting: { $pieces }.
new-cook-alarms = Its alarms keep ringing along with the new cook's. Find it again under Earlier cooks.
new-cook-go = Start a new cook
new-cook-stay = Stay with this cook

## Set-out
set-out-title = Pieces and dinner
set-out-add-title = Add pieces
set-out-count = How many
set-out-count-less = One fewer
set-out-count-more = One more
set-out-weight = Weight each ({ $unit })
set-out-pack = Weight of the pack of { $count } ({ $unit })
set-out-weighed = What is weighed
set-out-each = Weigh each
set-out-whole-pack = Weigh the pack
set-out-thickest = Thickest part ({ $unit })
set-out-thickest-hint = Height as it lies. Leave it blank if you did not measure; the forecast is much better with it.
set-out-start = Temperature going on ({ $unit })
set-out-start-hint = Below 26 °F (-3 °C) it is frozen: thaw it in the refrigerator first. From there to 30 °F (-1 °C) pick Still icy.
set-out-middle = Middle
middle-thawed = Thawed
middle-icy = Still icy
set-out-shape = Cut
shape-natural = Natural
shape-even = Pounded
shape-thick = Extra thick
set-out-add = { $count ->
    [one] Add 1 piece
   *[other] Add { $count } pieces
 }
set-out-smaller = How many are smaller
set-out-larger = How many are larger
set-out-sizes-hint = By eye; blank is none. The pack is shared out by that.
set-out-kind = Cut and middle
set-out-change = Change
set-out-name = Name, if you want one
set-out-weight-one = Weight ({ $unit })
set-out-keep = Save
set-out-remove = Remove { $piece }
set-out-facts = { $weight }, { $thickest } thick
set-out-facts-weight = { $weight }
set-out-facts-icy = { $facts }, still icy in the middle
set-out-cook-title = Your pit
set-out-pit = Pit temp at the grate ({ $unit })
set-out-pull = Pull temp ({ $unit })
set-out-pull-hint = Below 165 °F (74 °C): carryover finishes it as it rests.
set-out-ambient = Air temp where it rests ({ $unit })
set-out-dinner = Dinner at
set-out-dinner-clear = No set time
set-out-put-on = { $count ->
    [one] Put the piece on
   *[other] Put all { $count } on
 }
set-out-plan = See the plan
set-out-units = Units
units-customary = °F · oz · in
units-metric = °C · g · mm
set-out-wash = For boneless, skinless breasts only: bone and skin change the times. Wash your hands, cutting board and thermometer after handling raw chicken.
set-out-keeps = Raw chicken keeps one or two days in the fridge, and one or two more once it has thawed there. Throw out what lay longer.

## Messages beside a field
bad-blank = Nothing typed yet. Type a number such as { $example }.
bad-number = This is not a number. Type digits, with at most one decimal point or comma, such as { $example }.
bad-comma = 1,234 can be read two ways. Type 1234 or 1.234.
bad-range = Between { $low } and { $high } is accepted.
bad-dinner-past = { $time } today has passed. Pick a later time, or choose Tomorrow.
bad-dinner-blank = Pick a time, or choose No set time.
bad-time-blank = Pick a time.
bad-not-on = { $piece } is not on the pit yet. Put it on first; what you typed stays here.
bad-packed = { $piece } is served or bagged, so it takes no more readings. Undo that in the log first.

## Live cook
live-title = Cook
live-due-now = Now
live-all-done = All pieces are served or bagged.
live-thinking = Working out the next step…
live-order = Pull order
live-off = Off the pit
live-dinner = Dinner { $time }
live-dinner-late = { $span } late
live-dinner-early = { $span } early
live-dinner-on-time = on time
live-no-dinner = Dinner
live-no-dinner-hint = set a time
dinner-move = Move dinner
dinner-earlier = { $minutes } min earlier
dinner-later = { $minutes } min later
dinner-another = Another time
live-then = Then { $time }: { $what }
live-then-now = Then: { $what }
live-pit = Pit { $temperature }
live-pit-none = Pit not checked
live-pit-aim = set to { $temperature }
live-core-now = core now, forecast
live-core-band = { $low }–{ $high }
live-pull-window = Pull at { $temperature }, { $window }
live-pull-far = No pull time yet
live-no-reading = No reading yet
live-read-instant = { $temperature } instant-read, { $age }
live-read-leave-in = { $temperature } leave-in, { $age }
live-peak = Peak about { $temperature } at { $time }
live-proved-by = Proved: { $temperature } at { $time }
live-misplaced = The leave-in probe is probably not in the coldest spot, about { $length } off.

## What to do next
do-pull = Pull { $pieces }
do-check = Check { $pieces }
do-cover = Cover { $pieces } loosely with foil
do-second-place = Check a second spot in { $pieces }
do-prove = Check { $pieces } at rest
do-put-back = Put { $pieces } back on
do-reseat = Reposition the leave-in probe in { $pieces }
do-read-pit = Check the pit
do-put-on = Put { $pieces } on
do-take-out = Take { $pieces } out of the fridge
do-put-away = Put { $pieces } on, or back in the fridge
do-set-out = Add the pieces
do-pack = Portion and bag { $pieces }

do-out-of-fridge = Take the meat out of the fridge
do-season = Season the pieces
do-light-fire = Light the fire
do-start-pit = Start the pit
do-feed-fire = Feed the fire

why-chore = So dinner is on time.
why-feed-fire = So the pit holds { $temperature }.
why-take-out = { $pieces }: what goes on together, and nothing else yet.
why-check = From the side into the thickest part, until it settles. Lowest of two spots.
why-cover = Loose foil holds the heat without steaming.
why-second-place-of = { $piece } read { $temperature } in one spot. One spot is not enough to prove it. The lowest of two counts.
why-second-place-figure = { $piece } read { $temperature } in one spot, close to the limit. Type the lower of the two.
why-prove = Near the peak: thickest part, lowest of two spots.
why-put-back = The peak has passed, and no reading proved it.
why-reseat = Slide the tip to the middle of the thickest part.
why-read-pit = Not checked for a while.
why-put-on = Raw and ready to go on.
why-set-out = Weigh each one.
why-pack = Proved by a reading of each.

act-read = Check { $piece }
act-pulled = { $piece } pulled
act-covered = { $pieces } covered
act-second-place-of = { $piece }: second spot not under { $temperature }
act-put-back = { $piece } put back on
act-reseated = Probe repositioned
act-read-pit = Type the pit temp
act-put-on = Put { $pieces } on
act-taken-out = { $pieces } out of the fridge
act-put-away = { $pieces } back in the fridge
act-set-out = Add pieces
act-packed = { $pieces } bagged
do-answer = Is that right? { $piece }
do-read = Check { $piece }
do-mend-fire = Tend the fire, then check the pit
do-mend-pit = Set the pit right, then check it
do-hurry = Heat up { $pieces } now
do-chill = Chill { $pieces }
do-discard = Throw out { $pieces }
do-keep-hot = Keep { $pieces } hot
do-serve = Serve { $pieces }
why-reads = It read { $temperature }.
why-pull = It read { $temperature }. It comes off at { $pull }.
why-peak = Likely at its hottest, about { $temperature }.
why-unproved = No reading proves it, or none does any more. Do not eat it unless the log is put right.
why-keep-hot = Foil on, in a 170 °F (75 °C) oven or a warm cooler. It must stay at 140 °F (60 °C) or hotter: read one now.
act-answer = Answer
act-check = Lid up: start checking
act-chilled = { $pieces } in the refrigerator
act-discarded = { $pieces } thrown out
act-served = { $pieces } served
offer-pulled = Pulled
offer-put-on = Put on
offer-taken-out = Out of the fridge
offer-put-away = Back in the fridge
offer-chilled = In the refrigerator
offer-discarded = Thrown out
offer-of = { $what }: { $piece }
overdue-past = Likely past the pull temp since { $time }.
overdue-hot = Likely over { $temperature } since { $time }.
live-pull-overdue = Overdue: pull at { $temperature } was due by { $time }
limit-warm-up = Too long between 40 and 140 °F (4 and 60 °C): the limit is { $time }.
limit-out = Out of the refrigerator too long: the limit is { $time }. When in doubt, throw it out.
entry-pull-proving = Pull temp: set so the rest proves it
entry-pull-proving-piece = { $piece }: pull temp set so the rest proves it
entry-round-began = Lid up for { $pieces }
entry-skipped = { $piece } not checked this time
entry-round-ended = Lid closed
entry-discarded = { $piece } thrown out
pad-pull-at = Pull at { $temperature }.
round-pieces = Pieces to check
round-skip = Skip { $piece }
round-lid-closed = Lid closed
proposal-pull-at = Pull at
proposal-goes-back = Pulled at { $temperature }, it has to go back on about { $times } times in 10.
lying = Grate, front at the left
lying-place = { $piece } on the grate
all-pieces = all { $count }

## Reading pad
pad-title-pit = Pit
pad-about = Forecast { $temperature }, { $low } to { $high }
pad-pit-about = Set to { $temperature }
pad-instrument = Thermometer
instant-read = Instant-read
leave-in = Leave-in
places-two = Lowest of two
pad-typed = Reading in { $unit }
pad-typed-whole = Reading in { $unit } (three digits save it)
pad-store = Save reading
pad-delete = Delete the last digit
pad-decimal = Decimal point
pad-keys = Number pad
ask-reading = { $piece }: { $typed }? The forecast was near { $expected }.
ask-keep = { $typed } is right
ask-mend = Type it again
ask-other = It was another piece
pad-pull = Pull { $piece }
pad-put-on = Put { $piece } on
pad-reseat = Leave-in probe goes here

## Plan
plan-title = Plan
plan-no-pieces = Add at least one piece first.
plan-no-dinner = Set a time for dinner, and the day is planned back from there.
plan-dinner-past = Dinner time has passed. Set a new one.
plan-never-done = The pit is too cool for this pull temp. Run it hotter, or pull lower.
plan-legend = Bar: on the pit. Box: likely pull window, right 4 times in 5. Dot: rested.
plan-dinner-mark = Dinner
plan-now-mark = Now
plan-eat = Dinner
plan-on = Put { $piece } on
plan-pull = Pull { $piece }, likely { $window }
plan-rested = { $count ->
    [one] { $piece } has rested
   *[other] { $piece } have rested
 }
plan-ready = Ready { $window }. By { $time }: { $chance }.
plan-style = How to load the pit
plan-on-together = All on together
plan-off-together = All pulled together
plan-cost = Total hold { $held } · lid opened { $openings ->
    [one] once
   *[other] { $openings } times
 } · pit going { $fuel } · in time { $chance }
plan-calendar = Save the plan to my calendar
plan-calendar-hint = The phone's own calendar rings even when this page is closed. It does not follow the forecast: save again when times move, and it takes the place of what was saved before.
pit-low = The pit reads { $temperature } and is not climbing back.
pit-high = The pit reads { $temperature } and is not coming back down.
pit-recovering = The pit reads { $temperature } and is climbing back.
pit-settling = The pit reads { $temperature } and is coming back down.
lever-raise = Raise the pit to { $temperature }
lever-lower = Lower the pit to { $temperature }
lever-first = Serve { $pieces } first
lever-dinner = Eat at { $time }
lever-sooner = Dinner { $span } earlier; drier outside
lever-later = Dinner { $span } later; less dry outside
lever-first-ready = Those ready by { $time }; in time { $chance }
lever-chance = In time { $chance }
lever-choose = Do it
unit-min = min

## Habits
habits-title = Pit, grate and times
habits-pit = Type of pit
pit-indirect = Offset, or a fire to one side
pit-kettle = Kettle, coals to one side
pit-ceramic = Ceramic
pit-drum = Drum
pit-water = Water smoker
pit-pellet = Pellet grill
pit-gas = Gas, one side lit
pit-electric = Electric cabinet
habits-times = How long things take
habits-times-hint = In minutes. Time on the counter counts: two hours at most before going on, one above 90 °F (32 °C).
habits-preheat = Start to up to temp (min)
habits-feed = Feed the fire every (min, 0 never)
habits-fridge = Out of the fridge ahead (min)
habits-season = Seasoning (min)
habits-rest = Rest under foil (min)
habits-carve = Slicing and sides (min)
rack-title = Spots on the grate
rack-any = Everything fits, and cooks evenly.
rack-count = { $count ->
    [one] One piece fits.
   *[other] { $count } pieces fit at once.
 } More go on in waves. Tap a spot that is hotter or cooler than the rest.
rack-fewer = One spot fewer
rack-more = One spot more
rack-place = { $number }: { $heat }
rack-even = even
rack-hot = hot
rack-cool = cool
tonight-title = For tonight
tonight-hint = Dinner waits for these only. Tap a piece to change it.
tonight-is = { $piece }: tonight
tonight-is-not = { $piece }: later
gear-thermometer = Name of this thermometer
gear-pit = Name of this pit
gear-use = Use { $name }
gear-nameless = the one without a name
gear-new = Another one

## Rest
rest-title = Rest
rest-none = Nothing is off the pit yet.
rest-lead = Resting is no proof. A piece is proved by a reading of { $rule } or more in the thickest part, the lowest of two spots.
rest-off = Resting { $span }, not proved
rest-covered = covered
rest-uncovered = not covered
rest-cover = Cover
rest-read = Check
rest-second-of = Second spot not under { $temperature }
rest-pack = Served or bagged
rest-put-back = Put back on

## Log
log-title = Cook log
log-empty = Nothing has happened yet.
log-show-all = Show all { $count } entries
log-undo = Undo: { $what }
log-bring-back = Bring back: { $what }
log-bring-back-short = Bring back
log-undone = Undone
log-ignored = Not counted: { $why }
log-set-aside-title = Could not be read
log-set-aside-lead = These stored entries are kept as they were found and change nothing.

done-added = { $count ->
    [one] 1 piece added
   *[other] { $count } pieces added
 }
done-more = { $what }, and { $count } more
done-mended = Corrected: { $what }
done-again = Done again: { $what }
done-from-phone = From this phone: { $what }
log-back = Undo: { $what }
log-forward = Redo: { $what }
forgotten = Add something you missed
forgotten-what = What you missed
forgotten-put-on = Put on
forgotten-pulled = Pulled
which-piece = It was
when = When it was
mend-value = It was ({ $unit })
mend-store = Save
mend-leave = Leave as it was
mend-lost = { $count ->
    [one] 1 other entry would then no longer count.
   *[other] { $count } other entries would then no longer count.
 }
mend-refused = That cannot be: { $why }.

entry-pit-target = Pit set to { $temperature }
entry-ambient = Air where it rests: { $temperature }
entry-dinner = Dinner at { $time }
entry-dinner-none = No set time for dinner
entry-pull-target = Pull temp { $temperature }
entry-pull-target-piece = { $piece }: pull temp { $temperature }
entry-proof-rule = Proof: { $rule }
entry-set-out = { $piece } added: { $facts }
entry-piece-changed = { $piece } is now { $facts }
entry-taken-away = { $piece } removed
entry-put-on = { $piece } on
entry-taken-out = { $piece } out of the fridge
entry-back-in-fridge = { $piece } back in the fridge
entry-pit-read = Pit reads { $temperature }
entry-read-instant = { $piece } reads { $temperature }
entry-read-leave-in = { $piece } reads { $temperature }, leave-in
entry-read-two = { $reading }, low of 2
entry-second-place = Second spot no lower
entry-second-place-piece = { $piece }: second spot no lower
entry-vouched = Reading confirmed
entry-seated = Leave-in probe placed in { $piece }
entry-lid = Lid open { $span }
entry-pulled = { $piece } pulled
entry-covered = { $piece } covered
entry-packed = { $piece } served or bagged
entry-out-of-fridge = Meat is out of the fridge
entry-season = Seasoned
entry-light-fire = Fire lit
entry-start-pit = Pit started
entry-feed-fire = Fire fed
entry-pit-kind = Type of pit: { $kind }
entry-rack = Spots on the grate set
entry-habits = Cook times set
entry-style = Loading of the pit set
entry-tonight = { $piece } is for tonight
entry-later = { $piece } is for later
entry-tolerances = Thermometer tolerances set
entry-check-risk = Chance of a late check set
entry-thermometer = { $thermometer } tested: { $offset }
entry-thermometer-replaced = { $thermometer } replaced
entry-prompt-dismissed = Cleaned
entry-prompts-on = Cleaning reminders on
entry-prompts-off = Cleaning reminders off
entry-clock-jumped = The phone's clock jumped
entry-clock-unwatched = The phone slept or its clock was set: time at temperature starts over
entry-undone = Undone: { $what }
entry-other = Another entry

problem-unknown-piece = that piece was never added
problem-not-on-yet = the piece was not on the pit yet
problem-already-on = the piece was on the pit already
problem-already-off = the piece was pulled already
problem-already-packed = the piece was served or bagged already
problem-unknown-reading = the reading is gone
problem-too-late = it came too long after the reading
problem-impossible-value = its value is not possible
problem-in-the-future = it has not happened yet
problem-other = it makes no sense at that point

## Alarms
alarms = Alarms
alarms-more = { $count ->
    [one] and 1 more
   *[other] and { $count } more
}
alarm-past = Likely past the pull temp: { $what }
alarm-other = The cook needs you
alarm-late = Due { $span } ago
alarm-snooze = Snooze 5 min
alarm-go = Go there
alarm-done = Got it
alarms-elsewhere = Alarms of another cook
alarm-elsewhere = Cook of { $cook }: { $what }

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
curve-pit = Read { $temperature } at { $time }, set to { $aim }.
curve-pit-none = Not checked yet, set to { $aim }.
section-legend = Cut through the thickest part: the cross is the coldest spot, the line is the leave-in probe.

## Demo, new version, files
demo-title = Demo at 60 times the speed
demo-leave = Exit
start-demo = Watch a demo cook
version-title = A new version is ready.
version-take = Update
version-later = Later
file-save = Save this cook as a file
file-open = Open a cook from a file
file-saved = Saved as { $name }.
file-too-long = The file is too long. Up to 8 MB is accepted.
file-unreadable = The phone could not read this file. Choose it again.
file-later = A later version of this app wrote the file. Update the app to open it.
file-too-many = The file has too many entries. Up to { $most } are accepted.
file-no-cook = This is not a cook saved by this app. A file that ends in .json, from “Save this cook as a file”, is accepted.
file-no-bags = This is not a file of bags saved by this app. A file that ends in .json, from “Save the bags as a file”, is accepted.
file-refused = The phone did not take the file.

## Storage trouble
trouble-unstored = { $count ->
    [one] 1 entry is not saved yet.
   *[other] { $count } entries are not saved yet.
 }
trouble-slow = The phone is slow to save.
trouble-kept = The cook goes on, the app keeps trying, and the browser holds a second copy.
trouble-not-kept = The cook goes on and the app keeps trying, but save the cook as a file before you close this page, or they are lost.
trouble-taken-along = They come along when this page is reloaded.
trouble-denied = This browser saves nothing for this page (a private window, or storage is off).
trouble-full = The phone is out of storage.
trouble-busy = The phone's storage does not answer. Close other windows of Pull Order.
trouble-lost = The browser lost its storage, and gets it back once this page is reloaded.
trouble-replaced = A newer version of Pull Order is open in another window. Close this one.
trouble-taken = Another window saved something else in this place.
trouble-failed = The phone's storage failed.
trouble-details = What the browser says
set-aside-why = What was wrong with it
trouble-reload = Reload

## More, settings
more-title = More
more-this-cook = This cook
more-kitchen = Kitchen
more-this-phone = This phone
settings-title = Settings
settings-temperature = Temperature
settings-weight = Weight
settings-length = Thickness
settings-look = Appearance
look-light = Light
look-dark = Dark
look-sun = Sun
look-auto = Same as phone
settings-hand = Hand
hand-right = Right
hand-left = Left
settings-language = Language
language-en = English
language-es = Español
more-set-out = Pieces and plan
more-cautions = Cautions
more-settings = Settings
more-end = Go to the start screen
more-new = New cook
more-data = Everything stays on this phone and in this browser; nothing is sent anywhere. Clearing the browser's data for this site erases it, and is how to delete it. Save a cook as a file to keep it.

## Cautions
cautions-title = Cautions
caution-readings-title = Only readings prove a piece
caution-readings = A forecast tells you when to look. It never shows that a piece is safe. Only your thermometer does.
caution-instant-title = The temperature that proves
caution-instant = Chicken is safe the moment it reads { $rule } in the thickest part.
caution-every-title = Every piece, two spots
caution-every = Check every piece by itself with the instant-read: from the side, tip in the middle of the thickest part, and wait until the number settles. At least two spots; the lowest one counts. A leave-in probe tells you when to look; it proves nothing.
caution-clean-title = Clean hands, clean thermometer
caution-clean = Wash hands, cutting board and thermometer between raw and cooked. Clean the probe after each check of an underdone piece. Pull onto a clean plate.
caution-codes-title = Local food codes come first
caution-codes = Where a local food code says otherwise, follow it and not this app.
caution-licence-title = For sale or catering
caution-licence = Cooking for sale, or for guests who pay, takes the practices your license asks for. This app does not replace them.
caution-thermometer-title = Trust the thermometer only so far
caution-thermometer = Follow its maker's instructions. Test it in ice water and in boiling water before you rely on it.
caution-care-title = Take more care for some
caution-care = Young children, pregnant women, older adults and people with weak immune systems get sick more easily. When in doubt, cook further.
caution-knows-title = What this app knows
caution-knows = It knows only what you type, and only boneless, skinless breasts. The forecast comes from a heat model with its own errors; wind, an odd shape or a wrong weight can put it off.
caution-cannot-title = What this app cannot know
caution-cannot = It cannot know whether the probe was in the coldest spot, in the right piece or read right, how the meat was kept before, or what happened to its surface and after the cook. Nor can it tell a phone's clock that was set forward from a phone that slept: after either, time at temperature starts over.

## Safety: rule, thermometers, clocks, proof
more-safety = Proof rule and thermometers
more-thermometer = Test a thermometer
safety-title = Safety
safety-lead = Readings prove a piece, and nothing else does. Choose for this cook what a reading must show.
safety-rule = What proves a piece
safety-rule-own = A higher figure
safety-rule-held = Time at temperature
safety-rule-now = In use: { $rule }.
safety-source = Source: { $source }.
rule-instant = { $temperature } at once
rule-held = time at temperature, { $fat }% fat
rule-instant-text = A reading of { $temperature } or more in the thickest part, the lowest of two spots. The usual rule.
rule-own-text = Your own figure instead of { $temperature }, never lower.
rule-own-field = Your figure ({ $unit })
rule-own-use = Prove by this figure
rule-held-text = A lower temperature held long enough. Time counts only between two instant-read readings of the same piece, each the lowest of two spots, no more than { $gap } apart, at the lower of the two. Keep the app in front meanwhile: if the phone sleeps, the time starts over. { $instant } proves it at once here too.
rule-held-caution = The agency behind this table counts dry barbecue heat, without control of humidity, as not validated for the surface: on a dry surface Salmonella stands more heat than the table allows for. When in doubt, use { $instant }.
rule-held-fat = Fat in the meat
rule-held-fat-5 = 5%
rule-held-fat-12 = 12%, or not known
rule-held-rows = How long at what temperature
rule-held-row = { $temperature }: { $dwell }
rule-held-use = I know this; prove by the table
safety-thermometers = Thermometers
safety-tolerance-hint = How far each may be off, either way: the figure its maker gives.
safety-tolerance-instant = Instant-read ({ $unit })
safety-tolerance-leave-in = Leave-in ({ $unit })
safety-tolerance-pit = Pit ({ $unit })
safety-checks = Checks and reminders
safety-risk = Chance of being past the pull temp at a check ({ $unit })
safety-risk-hint = Lower means earlier checks, and more of them.
safety-prompts = Cleaning reminders
unit-percent = %
unit-ft = ft
unit-m = m

check-title = Test a thermometer
check-lead = Follow its maker's instructions first. A glass packed with crushed ice, topped up with water and stirred, is { $ice } anywhere. The boiling point of water depends on your altitude.
check-which = Thermometer to test
check-ice = Reads in ice water ({ $unit })
check-boiling = Reads in boiling water ({ $unit })
check-altitude = Altitude ({ $unit })
check-altitude-bad = An altitude of -1,476 ft (-450 m) to 18,045 ft (5,500 m) is accepted.
check-boils-at = Water boils at { $temperature } there.
check-use = Use this from now on
check-both = The lower of the two tests counts.
check-now = { $thermometer } now: { $offset }
check-too-far = It is off by more than { $most }. Test again with the tip in the middle of the water, then change its battery or the thermometer.
check-barred = This thermometer is too far off to correct. Nothing it read proves a piece until you replace it or its battery.
check-replaced = It has a new battery, or is another one
check-over-allowed = A food thermometer may be off by { $allowed } at most. A new battery or another thermometer is better than a correction.
offset-true = reads true
offset-high = reads high by { $by }; each reading counts as { $by } less
offset-low = reads low by { $by }; the forecast counts { $by } more, proof does not
reading-counted = { $shown }, counted as { $counted }

clocks = Safety clocks
clock-of = { $pieces }: { $what }
clock-left = { $left } left
clock-over = { $over } over
clock-raw = on the pit or back in the fridge by { $time }
clock-raw-why = Raw and out of the fridge, counted since { $since }. Two hours at the most, one above 90 °F (32 °C).
clock-raw-over = It lay raw too long. Throw it out.
clock-warm-up = past { $hot } by { $time }
clock-warm-up-why = Not known to be above { $hot } since { $since }. A slow or dying pit leaves meat too long between { $cold } and { $hot }.
clock-warm-up-over = Four hours between { $cold } and { $hot } are up. Heat does not destroy every toxin that bacteria leave: throw it out.
clock-fridge = in the fridge by { $time }
clock-fridge-why = Off the heat and not known to be above { $hot } since { $since }.
clock-fridge-over = It has been out too long to eat or to keep. Throw it out.
clock-cool-70 = at { $to } by { $time }
clock-cool-70-why = Cooling, first step: from { $from }, counted since { $since }.
clock-cool-70-over = The first step took too long. Reheat it to { $instant } at once, or throw it out.
clock-cool-41 = at { $to } by { $time }
clock-cool-41-why = Cooling, both steps. What helps: split it, flat bags, an ice bath.
clock-cool-41-over = Cooling took too long. Throw it out.
clock-expected = Forecast: at { $time }.
clock-expected-below = Forecast: below { $hot } from { $time }.
clock-not-expected = Forecast: not by then.
over-raw = It was raw and out of the fridge too long, past its limit of { $time }. Throw it out: heat does not destroy every toxin that bacteria leave.
over-warm-up = It was between 41 °F and 140 °F (5 °C and 60 °C) for more than four hours in all, since { $time }. Nothing proves it any more. Throw it out.
over-fridge = It was out of the fridge too long, past its limit of { $time }. Throw it out.
over-cooling = It cooled too slowly: the limit was { $time }. Throw it out.
over-processor = The FSIS lets a processor who records it take six hours from 50 °F to 130 °F (10 °C to 54 °C). This app cannot show that.

unproved = Resting, not yet proved.
unproved-peak = Not yet proved. Peak about { $temperature } at { $time }
short-not-read = It has no reading yet.
short-before = The last reading was before it went on again.
short-packed = The last reading was typed after it was bagged.
short-future = The last reading's time is later than when it was typed: a clock is wrong.
short-late = The last reading was typed too long after it was taken.
short-copied = The last reading was typed at the same instant as another piece's.
short-bad-thermometer = The thermometer was found to be too far off to correct.
short-leave-in = A leave-in probe shows one spot only. Use the instant-read.
short-cool = The last reading, { $reading }, is below { $rule }.
short-fast = The last reading is hotter than the piece can be by now. Check it again.
short-doubted = The last reading does not fit the others, and you have not said it is right.
short-contradicted = A later reading of { $reading } shows a colder spot.
short-one-place = The last reading was in one spot only.
short-other = The last reading does not prove it.
proof-read-at = Check two spots at { $time }, when it is likely hottest: about { $temperature } by forecast.
proof-peak-gone = It was likely hottest at { $time }. Check it now; if no reading proves it, it goes back on.
proof-peak-low = By forecast this rest does not get to { $rule }.
proof-hold = Held at { $temperature } or more since { $since }. A reading at { $complete } that is no lower proves it; check by { $by }, or the time starts over.
proof-hold-keep = Held at { $temperature } or more since { $since }. Check by { $by }, or the time starts over; { $complete } is the soonest that proves it.
back-on = Back on the pit: about { $middle }, by forecast { $low } to { $high }, until the core is at { $rule }. Then check it again.
back-on-unknown = Back on the pit until a reading of { $rule } proves it.
rest-lead-held = By the table you chose, a lower temperature held long enough between two readings proves it too.

proposal-lowest = { $temperature } is the lowest pull that the rest proves 19 times in 20.
proposal-take = Back to { $temperature }
lethality = Forecast, for information only; it proves nothing. By now about { $cuts } of the { $asked } tenfold cuts of Salmonella asked of poultry, figured on the cautious side ({ $source }).


## Alarms on this phone
more-alarms = Alarms on this phone
on = On
off = Off
alarms-title = Alarms on this phone
alarms-lead = With this page in front and the screen on, every alarm comes on time. With another app in front, or the screen off, the phone may stop the page within a minute or sooner. What you missed then comes the moment you look again, and says how late it is.
alarms-backup = A muted phone stays silent: turn silent mode off. When you leave the pit, set the phone's own timer too.
alarms-notify-not-offered = This browser shows no notifications for this page. On an iPhone they need the app on the home screen.
alarms-notify-not-asked = A notification shows an alarm over other apps, as long as the phone lets this page run.
alarms-notify-buttons = A notification shows an alarm over other apps, with snooze and done, as long as the phone lets this page run.
alarms-notify-ask = Allow notifications
alarms-notify-granted = Notifications are allowed.
alarms-notify-refused = Notifications are refused. The phone's settings for this page can change that.
alarms-awake = This phone can keep the screen on while a piece is on the pit. A low battery may stop that.
alarms-not-awake = This browser cannot keep the screen on. Set the phone's own screen timeout to long.
alarms-install = On the home screen the app's data is safer, and it may do more.
alarms-try = Test my alarms
alarms-trying = Testing…
alarms-trial-title = Test alarm
alarms-trial-snooze = Snooze
alarms-trial-done = Done
alarms-trial-body = This is how an alarm looks.
alarms-sound = Sound
alarms-spoken = Spoken calls
alarms-spoken-hint = After the tune a voice says what is due, once, so that you need not look at the phone. It is this phone's own voice and needs no signal. Answer the alarm and it stops.
alarms-spoken-try = Try the voice
alarms-spoken-trial = This is how a spoken call sounds.
alarms-spoken-none = This phone has no English voice that works offline, so it cannot say what is due. You may be able to add one in the phone's settings.
alarms-stay-awake = Keep the screen on
tried-sound = A tune played. If you did not hear it, turn up the phone's volume and turn off silent mode.
tried-no-sound = The browser allowed no sound.
tried-vibration = The browser said it would vibrate. Not every phone does.
tried-no-vibration = This phone does not vibrate for web apps.
tried-notification = A notification was shown.
tried-no-notification = No notification was shown.
tried-awake = The screen can be kept on.
tried-not-awake = The screen cannot be kept on now.
tried-kept = The browser promised to keep what is saved.
tried-not-kept = The browser did not promise to keep what is saved. Save the cook as a file to be sure.
tried-installed = The app runs from the home screen.
tried-not-installed = The app runs in a browser tab.

## Prompts
prompts = Clean hands, clean tools
prompt-probe = Clean the probe before the next piece.
prompt-plate = Get a clean plate for what you pull.
prompt-done = Done

## Kitchen: before the cook and after the rest
kitchen-entry = Kitchen: rub, portions, bags
kitchen-due = { $count ->
    [one] Eat 1 bag in the fridge now.
   *[other] Eat { $count } bags in the fridge now.
 }
kitchen-past = { $count ->
    [one] 1 bag in the fridge is past its day: throw it away.
   *[other] { $count } bags in the fridge are past their day: throw them away.
 }
kitchen-title = Kitchen
kitchen-tabs = Parts of the kitchen
kitchen-tab-bags = Bags
kitchen-tab-portions = Portions
kitchen-tab-rub = Rub
kitchen-empty = No bags yet. After the rest, portion the pieces and pack them here.
kitchen-may-be-deleted = An iPhone may delete what a web page keeps after a week without a visit, and other phones may when they run low on space. Put the app on the home screen, or save the bags as a file now and then.
bags-save = Save the bags as a file
bags-open = Open a file of bags
bags-taken-in = The file's bags are in the list.
kitchen-weight = { $weight } in bags. Eat the top one first.
kitchen-to-portions = Portion and pack
kitchen-to-chill = How fast bags cool
kitchen-to-labels = Print labels
kitchen-reminders = Reminders for my calendar
kitchen-no-reminders = Nothing to remind you of.
kitchen-gone = Used and thrown away
grams = { $count } g
hours = { $count } h
days = { $count } days
teaspoons = { $count } tsp
tablespoons = { $count } tbsp
form-whole = whole
form-sliced = sliced
form-chunked = in chunks
form-shredded = shredded
place-fridge = Fridge
place-freezer = Freezer
goes-tonight = Tonight
packing-plain = Plain bag
packing-covered = In broth or sauce
packing-vacuum = Vacuum-sealed
cooling-fridge = In the fridge
cooling-on-ice = On ice
cooling-ice-bath = In an ice bath

bag-number = Bag { $number }
bag-name = { $name }, bag { $number }
bag-facts = { $weight }, { $form }. { $packing }. { $place }. Cooked { $cooked }.
bag-eat-by = eat by { $day }
bag-best-by = best by { $day }
bag-past = Past its day: throw it away
bag-does-not-keep = do not eat: throw it away
bag-unproved = Nothing proves this meat any more: a reading of the cook was undone or corrected since. Do not eat it until the log is right again.
bag-throw-which = Throw bag { $number } away
bag-due = Eat it now: its last day is almost here.
bag-used = Used
bag-used-which = Bag { $number } was used
bag-throw-away = Throw away
bag-to-fridge = Move to the fridge
bag-to-freezer = Move to the freezer
bag-reheat = Reheat this bag
bag-not-packed = It was not packed after all
bag-gone = This bag was used or thrown away.
bag-unknown = This phone has no such bag.
done-packed = { $count ->
    [one] 1 bag packed
   *[other] { $count } bags packed
 }
done-moved = Bag { $number } moved: { $place }. The date printed on it no longer holds.
done-used = Bag { $number } used
done-thrown = Bag { $number } thrown away
done-weighed = Weight saved
done-rub = Rub saved
remind-use = Use by tomorrow: { $bag }
remind-throw = Throw away: { $bag }
remind-freezer = Use from the freezer soon: { $bag }

label-title = Label
label-what = Chicken breast, { $form }
label-cooked = Cooked { $cooked }
label-bath = Water bath { $bath }, { $minutes } min
label-bath-flat = Water bath { $bath }, { $minutes } min, lying flat
label-code = Open this label's reheat screen
label-hint = Write these lines on the bag, or print them. The code opens how to reheat this bag, even with no signal. The bath time is for the bag as it is now: a frozen bag takes longer than a chilled one.
label-unread = Label not readable
label-later = This label was made by a later version of the app. Update the app to read it.
label-damaged = This label's code is damaged. Choose the bag from the list instead.
labels-title = Print labels
labels-which = Which bags
labels-today = Packed today
labels-all = All bags
labels-sheet = Sheet
labels-sheet-drawn = The sheet as it prints
sheet-letter-thirty = Letter, 30
sheet-letter-ten = Letter, 10
sheet-a4-twenty-one = A4, 21
sheet-a4-fourteen = A4, 14
labels-gone = Labels used already
labels-gone-hint = How many are missing from the top of a sheet you started before.
labels-none = No bags to label.
labels-used-up = That sheet has no labels left. Type fewer, or 0 for a new sheet.
labels-print = { $count ->
    [one] Print 1 label
   *[other] Print { $count } labels
 }
labels-print-hint = Print on { $paper } paper at full size (100%), without margins. Try plain paper first.
paper-letter = Letter
paper-a4 = A4
labels-no-print = This browser cannot print. Write the label by hand.

portions-title = Portions
portions-none = No piece is proved yet. Pieces show up here once a reading proves them; you can also type in cooked pieces.
portions-estimate = { $count ->
    [one] 1 piece, about { $weight } cooked, give or take { $spread }.
   *[other] { $count } pieces, about { $weight } cooked, give or take { $spread }.
 }
portions-weighed = { $count ->
    [one] 1 piece, { $weight } cooked.
   *[other] { $count } pieces, { $weight } cooked.
 }
portions-to-come = { $count ->
    [one] 1 piece is not proved yet: about { $weight } cooked, give or take { $spread }.
   *[other] { $count } pieces are not proved yet: about { $weight } cooked, give or take { $spread }.
 }
portions-tonight-left = Tonight takes { $tonight }; about { $left } is left.
portions-tonight-short = Tonight wants { $tonight }: about { $short } short.
portions-weighings = { $count ->
    [one] The estimate counts 1 weighing of your own.
   *[other] The estimate counts { $count } weighings of your own.
 }
portions-source = What a portion holds: USDA Standard Reference 28, raw breast, by raw weight; only water is taken to be lost. Salt counts the rub and the added solution picked under Rub.
portions-weigh = All on the scale together ({ $unit })
portions-weigh-hint = Leave it blank to go by the estimate. Each weighing makes later estimates better.
portions-type-pieces = Type in cooked pieces
portions-how-many = How many
portions-cooked-each = Cooked weight each ({ $unit })
portions-add-cooked = Add cooked pieces
portions-cooked-hours = Hours since it came off the heat
portions-cooked-hours-hint = It must have been in the fridge within two hours and lain there since. Meat that was not does not keep: throw it away.
portions-clear-typed = Remove the typed pieces
portions-typed-piece = Typed piece { $number }
portions-tap-hint = Tap a piece to move it to the next meal. The rest are divided up again, with the least left over.
portions-move = move to { $to }
portions-dinner-name = Dinner
portions-rest-name = Whole pieces
portions-new-name = Lunches
portions-change-which = Change { $name }
portions-done = Done
portions-done-which = Done: { $name }
portions-add = Add a meal
portions-remove = Remove this meal
portions-choose-again = Let the app divide them again
portions-fixed = your pick
portions-left = Not used
portions-name = Name
portions-wanted = How much
wanted-servings = Servings
wanted-pieces = Pieces
wanted-rest = What is left
portions-each = Each serving ({ $unit })
portions-wish = { $goes }: { $amount }, { $form }
portions-rest-of = what is left
portions-form = How it's cut
portions-goes = Where it goes
portions-bags = Bags (blank: one each)
portions-thickness = Bag thickness ({ $unit })
portions-packing = Packed in
portions-servings-of = { $count } × { $each }
portions-pieces-of = { $count ->
    [one] 1 piece
   *[other] { $count } pieces
 }
portions-serving = Gets { $weight }: { $count } × { $each }
portions-gets = { $count ->
    [one] Gets 1 piece, { $weight }
   *[other] Gets { $count } pieces, { $weight }
 }
portions-short = Gets { $weight }, { $short } short
portions-pieces-short = Gets { $weight }, { $count } pieces short
portions-nothing = Gets nothing
portions-content = A portion, about: { $energy } kcal, { $protein } g protein, { $fat } g fat, { $salt } g salt
portions-no-lots = The pieces have nowhere to go. Add a meal.
portions-too-many = That is too many at once. Up to 40 pieces and 12 meals are accepted.
portions-bad-weight = Each piece and each serving must weigh more than 0.
pack-title = Bags to pack
pack-all = { $count ->
    [one] Pack 1 bag
   *[other] Pack { $count } bags
 }
pack-done = These bags are on your list.
pack-too-late = Out of the cold too long: throw it away
pack-unproved = { $pieces } lost its proof after it was served or bagged, or never had one. It goes into no bag: do not eat it unless the log is put right.
pack-again = Pack them again
pack-demo = The demo packs no bags.

chill-title = Chill
chill-none = No bags to chill. Portion the pieces first.
chill-core = Core temp when bagged ({ $unit })
chill-core-hint = Check the thickest piece. The times come from a model, not a reading.
chill-batch = { $what }: { $count } × { $weight }
chill-times = { $middle } in { $first }, { $cold } in { $second }.
chill-keeps = Keeps the two-step limit.
chill-order-title = Pack in this order
chill-where = Chilled where
chill-minutes = Minutes to pack a bag
chill-in-time = Due in the cold by { $by }. In this order it is bagged by { $done }.
chill-late = Was due in the cold by { $by }: { $span } late.
chill-helps-title = What helps
chill-helps-split = Slice thick pieces, or put fewer in a bag.
chill-helps-flat = Press bags flat, an inch (25 mm) or less, and lay them side by side.
chill-helps-ice = Sealed bags in ice water, stirred now and then, chill several times as fast as in the fridge.

reheat-which = Reheat: { $bag }
reheat-facts = { $weight }, { $form }, cooked { $cooked }.
reheat-not-here = This bag is not on this phone's list. Everything below comes from its label.
reheat-time = In a { $bath } water bath
reheat-likely = Likely { $likely } to a core of { $core }; the longer time covers a bag 12% thicker. Put it in now, ready at { $ready }. Check the core.
reheat-from = It starts
reheat-chilled = Chilled
reheat-frozen = Frozen
reheat-bath = Water bath ({ $unit })
reheat-core = Core temp wanted ({ $unit })
reheat-thickness = Thickness of the bag ({ $unit })
reheat-thickness-hint = Of the flat bag, or of a whole piece at its thickest. It decides most.
reheat-bath-too-cool = The water bath must be at least 3 °F (2 °C) hotter than the core wanted.
reheat-bath-too-hot = Water boils at 212 °F (100 °C). A water bath up to that is accepted.
reheat-core-bad = A core of 135 °F to 185 °F (57.3 °C to 85 °C) is accepted. Colder is not hot enough to keep.
reheat-too-long = That would take more than a day. Use a hotter bath or a thinner bag.
reheat-bag-bad = A bag of 10 g to 5 kg and 5 to 100 mm (0.2 to 4 in) thick is accepted.
reheat-thaw-title = Thaw first
reheat-thaw = In the fridge about { $fridge }, on a plate. In cold water about { $water }, changed every half hour, and then heated at once.
reheat-other-title = Pan or oven
reheat-pan-stir = Pan: low heat, lid on, a splash of broth; stir until the middle reads { $advised }.
reheat-pan-turn = Pan: low heat, lid on, a splash of broth; turn it until the middle reads { $advised }.
reheat-oven = Oven: { $oven } or more, covered, a splash of broth, until the middle reads { $advised }.

caution-leftovers = USDA says { $advised } for leftovers. The FDA Food Code allows less only for food that was cooked and chilled properly and is served right away to the person who ordered it.
caution-serve-or-hold = Serve it right away, or keep it at 140 °F (60 °C) or hotter. Reheat only what you will eat: do not chill it a second time.
caution-slow-to-warm = It takes more than four hours to get to 135 °F (57 °C). Thaw it first, or use a thinner bag.
caution-vacuum = Vacuum-sealed: without air, Clostridium botulinum can grow above 38 °F (3 °C), with no smell. Keep it at 38 °F or below, or frozen. Thaw it in the fridge, or heat it from frozen.
caution-two-hours = Within two hours of the pit, into a fridge at 40 °F (4 °C) or below; within one hour where it is above 90 °F (32 °C).
caution-first-step = Takes more than two hours from 135 °F to 70 °F (57 °C to 21 °C): cut it up, spread it thinner, or use ice.
caution-second-step = Takes more than six hours from 135 °F to 41 °F (57 °C to 5 °C) in all: use ice or a thinner bag.
caution-past-eat-by = Past its eat-by day. Throw it away, whatever it smells like.
caution-too-late = It came too late into the cold. Throw it away, whatever it smells like.
caution-cooling-over = It has cooled too slowly already: two hours to 70 °F (21 °C), six to 41 °F (5 °C) in all. Throw it away.
caution-middle-not-seen = It has been below 135 °F (57 °C) for more than two hours. If nobody read 70 °F (21 °C) in that time, throw it away.
caution-slow-to-reheat = It warms for more than two hours. Thaw it first, or use a thinner bag or hotter water.
caution-slow-to-thaw = That is too long in water warmer than a fridge. Thaw it in the fridge.
caution-days-unknown = This label does not say for how many days it was in the fridge before it was frozen. Four days in all, before and after, is the most.
caution-local-code = Your local food code comes before anything here.

rub-title = Rub
rub-own-name = My rub
rub-another = Another rub
rub-new-name = Its name
rub-new = New rub
rub-measure = One part is
rub-by-volume = A spoon or cup
rub-by-weight = A weight
rub-parts = Parts
rub-parts-of = Parts: { $parts }
rub-spice = Ingredient
rub-ingredient = Your name for it
rub-blend-salt = Salt in it (% by weight)
rub-blend-hint = { $sodium } g of sodium is { $salt } g of salt.
rub-add = Add to the rub
rub-take-out = Remove
rub-take-out-which = Remove { $name }
rub-empty = Nothing in it yet. Add each ingredient with its parts.
rub-salt-share = { $share }% salt by weight
rub-heavy-fact = Rubs under about 20% salt can go on heavy (common practice, no source).
rub-mix-title = To mix
rub-for-cook = { $count ->
    [one] For the open cook: 1 piece, { $weight } raw
   *[other] For the open cook: { $count } pieces, { $weight } raw
 }
rub-no-pieces = There are no pieces to rub.
rub-bad = Parts must be 0 or more, and the salt in a blend 0 to 100%.
solution-title = Sold with added solution?
solution-none = No
solution-stated = Yes
solution-unknown = I don't know
solution-share = Solution added (%, from the package)
solution-hint = The package says something like "contains up to 15% of a solution". "Retained water" is plain water: no salt.
solution-holds = It already holds about { $held } g of salt per 100 g. Rub and brine below count it. (Estimate: the solution is taken as 5% salt.)
solution-may-hold = It may already hold { $held } g of salt per 100 g, as with 15% of a solution. Rub and brine below count that. (Estimate: the solution is taken as 5% salt.)
rub-coat = Coat
coat-light = Light
coat-medium = Medium
coat-heavy = Heavy
rub-limit = Most salt (g per 100 g of meat)
rub-total = Rub for all: { $weight } g
rub-level = Salt: { $level } g per 100 g of meat; { $saltiest } g on the smallest piece.
rub-oil = Oil as a binder: { $oil }
rub-over = The smallest piece gets { $saltiest } g of salt per 100 g; your limit is { $limit } g. Use a lighter coat or less salt.
brine-title = Brine
brine-none = No brine
brine-dry = Dry brine
brine-wet = Wet brine
brine-level = Salt wanted (g per 100 g)
brine-water = Water ({ $unit })
brine-salt = Weigh out { $grams } g of salt
brine-between = { $quick } to { $slow }
brine-outer = Outer half seasoned: { $span }
brine-middle = Seasoned to the middle: { $span }
brine-guide = A guide by the thickest piece: salt spreads at very different speeds. Keep it in the fridge, and leave the salt out of the rub.
brine-held-already = The chicken already holds as much salt as that. Skip the brine.
brine-outlasts = The middle may take longer than raw chicken keeps in the fridge (two days). Cook it by then.
spice-table-salt = Table salt
spice-coarse-salt = Coarse salt
spice-flake-salt = Flake salt
spice-sugar = Sugar
spice-brown-sugar = Brown sugar
spice-paprika = Paprika
spice-black-pepper = Black pepper
spice-garlic = Garlic powder
spice-onion = Onion powder
spice-chilli = Chili powder
spice-cumin = Cumin
spice-cayenne = Cayenne pepper
spice-mustard = Mustard powder
spice-other = Another spice
spice-blend = A blend with salt
