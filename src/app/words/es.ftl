# Every text of the app, in English. A piece is one breast.

app-name = Pull Order
starting = Pull Order is starting…

## Names and small words
piece = Piece { $number }
piece-named = { $name }
unit-f = °F
unit-c = °C
unit-g = g
unit-oz = oz
unit-mm = mm
unit-in = in
now = now
minutes = { $count } min
hours-minutes = { $hours } h { $minutes } min
seconds = { $count } s
ago = { $span } ago
just-now = just now
list-and = { $first } and { $last }
back = Back
undo = Undo
close = Close
save = Save
change = Change
yes = Yes
no = No
today = Today
tomorrow = Tomorrow

## Stages
stage-raw = Raw
stage-on = On the pit
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
start-cook-row = { $when } · { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
 }
cook-begun = Cook of { $when }
pieces-count = { $count ->
    [one] 1 piece
   *[other] { $count } pieces
 }

## Set-out
set-out-title = Set out
set-out-pieces = Pieces
set-out-none = No piece yet. Weigh the first one.
set-out-add-title = Add pieces
set-out-count = How many alike
set-out-count-less = One fewer
set-out-count-more = One more
set-out-weight = Weight each ({ $unit })
set-out-thickest = Thickest part ({ $unit })
set-out-thickest-hint = Height as it lies. Leave blank if not measured; a measured piece is forecast much better.
set-out-start = Temperature going on ({ $unit })
set-out-start-hint = From the fridge it is about { $fridge }.
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
set-out-dinner-none = No set time
set-out-dinner-clear = No set time
set-out-put-on = { $count ->
    [one] Put the piece on
   *[other] Put all { $count } on
 }
set-out-later = To the cook
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
live-next = Next
live-due-now = Now
live-in = in { $span }
live-late = { $span } ago
live-at = at { $time }
live-nothing = Nothing to do now.
live-all-done = All pieces are served or packed.
live-order = Pull order
live-off = Off the pit
live-dinner = Dinner { $time }
live-pit = Pit { $temperature }
live-pit-none = Pit not read
live-pit-aim = set for { $temperature }
live-core-now = core now, forecast
live-core-band = { $low }–{ $high }
live-pull-window = Pull { $window }
live-pull-at = Pull about { $time }
live-pull-far = No pull time yet
live-no-reading = No reading yet
live-read = Read { $temperature } · { $age }
live-read-instant = { $temperature } instant-read, { $age }
live-read-leave-in = { $temperature } leave-in, { $age }
live-peak = Peak about { $temperature } at { $time }
live-proved-by = Proved: { $temperature } read at { $time }
live-forecasting = Working out the forecast…
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
pad-pull-at = pull at { $temperature }
pad-instrument = Thermometer
instant-read = Instant-read
leave-in = Leave-in
pad-places = Places tried
places-one = One place
places-two = Lowest of two
pad-typed = Reading in { $unit }
pad-store = Store reading
pad-delete = Delete the last digit
pad-decimal = Decimal mark
pad-digit = { $digit }
pad-keys = Number pad
ask-title = Is this right?
ask-reading = { $piece }: { $typed }? It was expected near { $expected }.
ask-keep = { $typed } is right
ask-mend = Type it again
pad-clean = Clean the probe before the next piece.
pad-pull = Pull { $piece }
pad-put-on = Put { $piece } on
pad-cover = Cover { $piece }
pad-reseat = Leave-in seated here

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
rest-hot = { $temperature } in one place. Try a second one.

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
log-typed-later = typed at { $time }

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

## Storage trouble
trouble-storage = This phone did not store the last entry. The cook goes on, but keep this page open.

## More, settings
more-title = More
settings-title = Settings
settings-units = Units
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
more-alarms = Alarmas en este teléfono
on = Sí
off = No
alarms-title = Alarmas en este teléfono
alarms-lead = Con esta página delante y la pantalla encendida, cada alarma llega a su hora. Con otra aplicación delante, o la pantalla apagada, el teléfono puede parar la página en un minuto o antes. Lo que se perdió llega en cuanto vuelve a mirar, y dice cuánto se retrasó.
alarms-backup = Si se aleja del fuego, ponga también el temporizador del teléfono.
alarms-notify-not-offered = Este navegador no muestra notificaciones de esta página. En un iPhone hace falta la aplicación en la pantalla de inicio.
alarms-notify-not-asked = Una notificación muestra la alarma sobre otras aplicaciones, con posponer y hecho, mientras el teléfono deje correr esta página.
alarms-notify-ask = Permitir notificaciones
alarms-notify-granted = Las notificaciones están permitidas.
alarms-notify-refused = Las notificaciones están rechazadas. Se puede cambiar en los ajustes del teléfono para esta página.
alarms-awake = Este teléfono puede dejar la pantalla encendida mientras haya una pieza en el fuego. Con poca batería puede que no.
alarms-not-awake = Este navegador no puede dejar la pantalla encendida. Alargue el tiempo de pantalla en los ajustes del teléfono.
alarms-install = En la pantalla de inicio la aplicación se guarda mejor y puede hacer más.
alarms-try = Probar mis alarmas
alarms-trying = Probando…
alarms-trial-title = Alarma de prueba
alarms-trial-snooze = Posponer
alarms-trial-done = Hecho
alarms-trial-body = Así se ve una alarma.
alarms-sound = Sonido
alarms-stay-awake = Dejar la pantalla encendida
tried-sound = Sonó una melodía. Si no la oyó, suba el volumen del teléfono.
tried-no-sound = El navegador no permitió sonido.
tried-vibration = El navegador dijo que vibraría. No todos los teléfonos lo hacen.
tried-no-vibration = Este teléfono no vibra para aplicaciones web.
tried-notification = Se mostró una notificación.
tried-no-notification = No se mostró ninguna notificación.
tried-awake = La pantalla puede quedar encendida.
tried-not-awake = La pantalla no puede quedar encendida ahora.
tried-kept = El navegador prometió conservar lo guardado.
tried-not-kept = El navegador no prometió conservar lo guardado. Exporte la cocción para estar seguro.
tried-installed = La aplicación corre desde la pantalla de inicio.
tried-not-installed = La aplicación corre en una pestaña del navegador.
