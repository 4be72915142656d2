# Todos los textos de la aplicación, en español. Una pieza es una pechuga.

## Names and small words
piece = Pieza { $number }
pieces = Piezas { $numbers }
the-piece = la pieza { $number }
the-pieces = las piezas { $numbers }
the-time = { $hour ->
    [one] la { $time }
   *[other] las { $time }
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
ago = hace { $span }
just-now = ahora mismo
list-and = { $first } y { $last }
span-of = { $first } a { $last }
back = Atrás
undo = Deshacer
redo = Rehacer
change = Cambiar
today = Hoy
tomorrow = Mañana

## Stages
stage-raw = Cruda
stage-resting = En reposo, sin comprobar
stage-proved = Comprobada
stage-packed = Servida o empacada

## Tabs
tabs = Partes de la aplicación
tab-cook = Ahumado
tab-rest = Reposo
tab-log = Bitácora
tab-more = Más

## Start
start-title = Pull Order
start-lead = Cada pechuga sin hueso ni piel está lista a su hora. Agrega tus piezas y escribe lo que marca tu termómetro: la app te dice cuándo medir y sacar cada una.
start-new = Nuevo ahumado
start-continue = Volver a este ahumado
start-earlier = Ahumados anteriores
start-caution = Un pronóstico nunca demuestra que el pollo es seguro. Solo tu termómetro: una pieza está comprobada cuando marca { $rule } o más en la parte más gruesa, en el menor de dos puntos.
cook-begun = Ahumado del { $when }
cook-pieces = { $count ->
    [0] Sin piezas
    [one] 1 pieza
   *[other] { $count } piezas
 }
cook-raw = { $count ->
    [one] 1 cruda
   *[other] { $count } crudas
 }
cook-on = { $count } en el ahumador
cook-off = { $count } fuera del ahumador
cook-packed = { $count ->
    [one] 1 servida o empacada
   *[other] { $count } servidas o empacadas
 }
cook-all-packed = ya se sirvió o empacó todo
new-cook-ask = ¿Empezar otro ahumado?
new-cook-on = En el ahumador: { $pieces }.
new-cook-resting = En reposo: { $pieces }.
new-cook-alarms = Sus alarmas siguen sonando junto con las del nuevo. Lo encuentras en Ahumados anteriores.
new-cook-go = Empezar un ahumado nuevo
new-cook-stay = Seguir con este ahumado

## Set-out
set-out-title = Piezas y cena
set-out-add-title = Agregar piezas
set-out-count = Cuántas
set-out-count-less = Una menos
set-out-count-more = Una más
set-out-weight = Peso de cada una ({ $unit })
set-out-pack = Peso del paquete de { $count } ({ $unit })
set-out-weighed = Qué se pesa
set-out-each = Pesar cada pieza
set-out-whole-pack = Pesar el paquete
set-out-thickest = Parte más gruesa ({ $unit })
set-out-thickest-hint = La altura tal como está puesta. Déjalo vacío si no la mediste; con ella el pronóstico es mucho mejor.
set-out-start = Temperatura al entrar ({ $unit })
set-out-start-hint = A menos de 26 °F (-3 °C) está congelada: descongélala antes en el refrigerador. De ahí a 30 °F (-1 °C) elige Aún con hielo.
set-out-middle = Centro
middle-thawed = Descongelado
middle-icy = Aún con hielo
set-out-shape = Corte
shape-natural = Natural
shape-even = Aplanada
shape-thick = Muy gruesa
set-out-add = { $count ->
    [one] Agregar 1 pieza
   *[other] Agregar { $count } piezas
 }
set-out-smaller = Cuántas más chicas
set-out-larger = Cuántas más grandes
set-out-sizes-hint = A ojo; vacío es ninguna. Así se reparte el peso del paquete.
set-out-kind = Corte y centro
set-out-change = Cambiar
set-out-name = Nombre, si quieres
set-out-weight-one = Peso ({ $unit })
set-out-keep = Guardar
set-out-remove = Quitar { $piece }
set-out-facts = { $weight }, { $thickest } de grueso
set-out-facts-weight = { $weight }
set-out-facts-icy = { $facts }, con hielo en el centro
set-out-cook-title = Tu ahumador
set-out-pit = Temperatura del ahumador en la parrilla ({ $unit })
set-out-pull = Temperatura para sacar ({ $unit })
set-out-pull-hint = Menos de 165 °F (74 °C): el reposo termina de cocerla.
set-out-ambient = Temperatura del aire donde reposa ({ $unit })
set-out-dinner = Cena a las
set-out-dinner-clear = Sin hora fija
set-out-put-on = { $count ->
    [one] Poner la pieza
   *[other] Poner las { $count }
 }
set-out-plan = Ver el plan
set-out-units = Unidades
units-customary = °F · oz · in
units-metric = °C · g · mm
set-out-wash = Solo para pechugas sin hueso ni piel: el hueso y la piel cambian los tiempos. Lávate las manos y lava la tabla y el termómetro después de tocar pollo crudo.
set-out-keeps = El pollo crudo dura uno o dos días en el refrigerador, y uno o dos más ya descongelado ahí. Tira lo que estuvo más tiempo.

## Messages beside a field
bad-blank = Todavía no hay nada escrito. Escribe un número, por ejemplo { $example }.
bad-number = Esto no es un número. Escribe números, con un solo punto o coma decimal, por ejemplo { $example }.
bad-comma = 1,234 se puede leer de dos maneras. Escribe 1234 o 1.234.
bad-range = Se acepta entre { $low } y { $high }.
bad-dinner-past = Hoy esa hora, { $time }, ya pasó. Elige una hora más tarde, o Mañana.
bad-dinner-blank = Elige una hora, o Sin hora fija.
bad-time-blank = Elige una hora.
bad-not-on = { $piece }: todavía no está en el ahumador. Ponla primero; lo que escribiste se queda aquí.
bad-packed = { $piece }: ya está servida o empacada y no admite más lecturas. Deshazlo primero en la bitácora.

## Live cook
live-title = Ahumado
live-due-now = Ahora
live-all-done = Todas las piezas están servidas o empacadas.
live-thinking = Calculando el próximo paso…
live-order = Orden de salida
live-off = Fuera del ahumador
live-dinner = Cena { $time }
live-dinner-late = { $span } tarde
live-dinner-early = { $span } antes
live-dinner-on-time = a tiempo
live-no-dinner = Cena sin hora
live-no-dinner-hint = fijarla
dinner-move = Mover la cena
dinner-earlier = { $minutes } min antes
dinner-later = { $minutes } min después
dinner-another = Otra hora
live-then = Luego, { $time }: { $what }
live-then-now = Luego: { $what }
live-pit = Ahumador { $temperature }
live-pit-none = Sin medir
live-pit-aim = puesto a { $temperature }
live-core-now = centro ahora, pronóstico
live-core-band = { $low }–{ $high }
live-pull-window = Se saca a { $temperature }, { $window }
live-pull-far = Todavía sin hora de salida
live-no-reading = Todavía sin lectura
live-read-instant = { $temperature } instantánea, { $age }
live-read-leave-in = { $temperature } sonda fija, { $age }
live-peak = Máximo aprox. { $temperature } a { $time }
live-proved-by = Comprobada: { $temperature }, { $time }
live-misplaced = La sonda fija probablemente no está en el punto más frío, sino a { $length } aprox.

## What to do next
do-pull = Saca { $pieces }
do-check = Mide { $pieces }
do-cover = Cubre { $pieces } con papel aluminio, sin apretar
do-second-place = Mide otro punto en { $pieces }
do-prove = Mide { $pieces } en reposo
do-put-back = Regresa { $pieces } al ahumador
do-reseat = Reacomoda la sonda fija de { $pieces }
do-read-pit = Mide el ahumador
do-put-on = Pon { $pieces } en el ahumador
do-take-out = Saca del refrigerador { $pieces }
do-put-away = Pon { $pieces } en el ahumador o de vuelta en el refrigerador
do-set-out = Agrega las piezas
do-pack = Corta en porciones y empaca { $pieces }

do-out-of-fridge = Saca la carne del refrigerador
do-season = Sazona las piezas
do-light-fire = Enciende el fuego
do-start-pit = Enciende el ahumador
do-feed-fire = Échale combustible al fuego

why-chore = Para que la cena esté a tiempo.
why-feed-fire = Para que el ahumador se mantenga a { $temperature }.
why-take-out = { $pieces }: lo que va junto, y nada más por ahora.
why-check = De lado, en la parte más gruesa, hasta que se estabilice. El menor de dos puntos.
why-cover = El papel flojo guarda el calor sin cocer al vapor.
why-second-place-of = Un punto de { $piece } marcó { $temperature }. Un solo punto no basta para comprobarla. Cuenta el menor de dos.
why-second-place-figure = Un punto de { $piece } marcó { $temperature }, cerca del límite. Escribe el menor de los dos.
why-prove = Cerca del máximo: parte más gruesa, el menor de dos puntos.
why-put-back = Ya pasó el máximo y ninguna lectura la comprobó.
why-reseat = Mete la punta hasta el centro de la parte más gruesa.
why-read-pit = Hace rato que no se mide.
why-put-on = Crudo y listo para entrar.
why-set-out = Pesa cada una.
why-pack = Con una lectura que comprueba cada una.

act-read = Medir { $piece }
act-pulled = Ya salió { $piece }
act-covered = Con papel: { $pieces }
act-second-place-of = Otro punto de { $piece }: no menos de { $temperature }
act-put-back = Ya regresó { $piece }
act-reseated = Sonda reacomodada
act-read-pit = Escribir la temperatura
act-put-on = Poner { $pieces }
act-taken-out = Fuera del refrigerador: { $pieces }
act-put-away = De vuelta en el refrigerador: { $pieces }
act-set-out = Agregar piezas
act-packed = En bolsas: { $pieces }
do-answer = ¿Es correcta la lectura de { $piece }?
do-read = Mide { $piece }
do-mend-fire = Atiende el fuego y luego mide el ahumador
do-mend-pit = Corrige el ahumador y luego mídelo
do-hurry = Sube ya la temperatura de { $pieces }
do-chill = Enfría { $pieces }
do-discard = Tira { $pieces }
do-keep-hot = Conserva el calor de { $pieces }
do-serve = Sirve { $pieces }
why-reads = Marcó { $temperature }.
why-pull = Marcó { $temperature }. Se saca a { $pull }.
why-peak = Debe estar en su máximo, aprox. { $temperature }.
why-unproved = Ninguna lectura la comprueba, o ya ninguna. No la comas si no se corrige la bitácora.
why-keep-hot = Con papel aluminio, en un horno a 170 °F (75 °C) o en una hielera tibia. Debe seguir a 140 °F (60 °C) o más: mide una ahora.
act-answer = Responder
act-check = Tapa abierta: empezar a medir
act-chilled = En el refrigerador: { $pieces }
act-discarded = A la basura: { $pieces }
act-served = En la mesa: { $pieces }
offer-pulled = Ya salió
offer-put-on = Poner
offer-taken-out = Fuera del refrigerador
offer-put-away = De vuelta en el refrigerador
offer-chilled = En el refrigerador
offer-discarded = A la basura
offer-of = { $what }: { $piece }
overdue-past = Es probable que se haya pasado desde { $time }.
overdue-hot = Es probable que pase de { $temperature } desde { $time }.
live-pull-overdue = Atrasada: se sacaba a { $temperature } a más tardar a { $time }
limit-warm-up = Demasiado tiempo entre 40 y 140 °F (4 y 60 °C): el límite es a { $time }.
limit-out = Demasiado tiempo fuera del refrigerador: el límite es a { $time }. Si tienes duda, tírala.
entry-pull-proving = Temperatura para sacar: la que el reposo comprueba
entry-pull-proving-piece = { $piece }: temperatura para sacar, la que el reposo comprueba
entry-round-began = Tapa abierta para { $pieces }
entry-skipped = { $piece }: no se midió esta vez
entry-round-ended = Tapa cerrada
entry-discarded = { $piece }: a la basura
pad-pull-at = Se saca a { $temperature }.
round-pieces = Piezas por medir
round-skip = Saltar { $piece }
round-lid-closed = Tapa cerrada
proposal-pull-at = Se saca a
proposal-goes-back = Si sale a { $temperature }, tiene que regresar { $times } de cada 10 veces, aprox.
lying = Parrilla, el frente a la izquierda
lying-place = { $piece } en la parrilla
all-pieces = las { $count }

## Reading pad
pad-title-pit = Ahumador
pad-about = Pronóstico { $temperature }, de { $low } a { $high }
pad-pit-about = Puesto a { $temperature }
pad-instrument = Termómetro
instant-read = Lectura instantánea
leave-in = Sonda fija
places-two = Menor de dos
pad-typed = Lectura en { $unit }
pad-typed-whole = Lectura en { $unit } (tres dígitos la guardan)
pad-store = Guardar lectura
pad-delete = Borrar el último dígito
pad-decimal = Punto decimal
pad-keys = Teclado numérico
ask-reading = { $piece }: ¿{ $typed }? El pronóstico era de { $expected } aprox.
ask-keep = { $typed } es correcto
ask-mend = Escribirla otra vez
ask-other = Era otra pieza
pad-pull = Sacar { $piece }
pad-put-on = Poner { $piece }
pad-reseat = La sonda fija va aquí

## Plan
plan-title = Plan
plan-no-pieces = Agrega primero al menos una pieza.
plan-no-dinner = Pon una hora para la cena y el día se planea hacia atrás desde ahí.
plan-dinner-past = La hora de la cena ya pasó. Pon otra.
plan-never-done = El ahumador está muy frío para esta temperatura. Súbelo, o saca a menos.
plan-legend = Barra: en el ahumador. Caja: ventana probable para sacar, acierta 4 de cada 5 veces. Punto: ya reposó.
plan-dinner-mark = Cena
plan-now-mark = Ahora
plan-eat = Cena
plan-on = Pon { $piece } en el ahumador
plan-pull = Saca { $piece }, probablemente { $window }
plan-rested = { $count ->
    [one] Ya reposó { $piece }
   *[other] Ya reposaron { $piece }
 }
plan-ready = Todo listo { $window }. A más tardar a { $time }: { $chance }.
plan-style = Cómo cargar el ahumador
plan-on-together = Todas entran juntas
plan-off-together = Todas salen juntas
plan-cost = Espera total { $held } · tapa abierta { $openings ->
    [one] una vez
   *[other] { $openings } veces
 } · ahumador encendido { $fuel } · a tiempo { $chance }
plan-calendar = Guardar el plan para mi calendario
plan-calendar-hint = El calendario del teléfono suena aunque esta página esté cerrada. No sigue el pronóstico: guárdalo otra vez cuando cambien las horas, y reemplaza lo que guardaste antes.
pit-low = El ahumador marca { $temperature } y no se recupera.
pit-high = El ahumador marca { $temperature } y no baja.
pit-recovering = El ahumador marca { $temperature } y se recupera.
pit-settling = El ahumador marca { $temperature } y va bajando.
lever-raise = Subir el ahumador a { $temperature }
lever-lower = Bajar el ahumador a { $temperature }
lever-first = Servir primero { $pieces }
lever-dinner = Comer a { $time }
lever-sooner = Cena { $span } antes; más seca por fuera
lever-later = Cena { $span } después; menos seca por fuera
lever-first-ready = Esas, listas a { $time }; a tiempo { $chance }
lever-chance = A tiempo { $chance }
lever-choose = Hacerlo
unit-min = min

## Habits
habits-title = Ahumador, parrilla y tiempos
habits-pit = Tipo de ahumador
pit-indirect = Offset, o fuego a un lado
pit-kettle = Asador redondo, carbón a un lado
pit-ceramic = Cerámico
pit-drum = Tambor
pit-water = Ahumador de agua
pit-pellet = Asador de pellets
pit-gas = Gas, un solo lado encendido
pit-electric = Ahumador eléctrico
habits-times = Cuánto tarda cada cosa
habits-times-hint = En minutos. El tiempo fuera del refrigerador cuenta: dos horas como máximo antes de entrar, una con más de 90 °F (32 °C).
habits-preheat = De encender a estar caliente (min)
habits-feed = Echar combustible cada (min, 0 nunca)
habits-fridge = Fuera del refrigerador antes (min)
habits-season = Sazonar (min)
habits-rest = Reposo con papel aluminio (min)
habits-carve = Rebanar y guarniciones (min)
rack-title = Lugares en la parrilla
rack-any = Cabe todo, y se cuece parejo.
rack-count = { $count ->
    [one] Cabe una pieza.
   *[other] Caben { $count } piezas a la vez.
 } Las demás van por tandas. Toca un lugar que sea más caliente o más frío.
rack-fewer = Un lugar menos
rack-more = Un lugar más
rack-place = { $number }: { $heat }
rack-even = parejo
rack-hot = caliente
rack-cool = frío
tonight-title = Para esta noche
tonight-hint = La cena solo espera a estas. Toca una pieza para cambiarla.
tonight-is = { $piece }: esta noche
tonight-is-not = { $piece }: después
gear-thermometer = Nombre de este termómetro
gear-pit = Nombre de este ahumador
gear-use = Usar { $name }
gear-nameless = el que no tiene nombre
gear-new = Otro más

## Rest
rest-title = Reposo
rest-none = Todavía no sale nada del ahumador.
rest-lead = El reposo no comprueba nada. Una pieza queda comprobada con una lectura de { $rule } o más en la parte más gruesa, la menor de dos puntos.
rest-off = Reposa { $span }, sin comprobar
rest-covered = cubierta
rest-uncovered = sin cubrir
rest-cover = Cubrir
rest-read = Medir
rest-second-of = Segundo punto no menor de { $temperature }
rest-pack = Servida o en bolsa
rest-put-back = Regresar al ahumador

## Log
log-title = Bitácora
log-empty = Todavía no pasa nada.
log-show-all = Ver las { $count } entradas
log-undo = Deshacer: { $what }
log-bring-back = Recuperar: { $what }
log-bring-back-short = Recuperar
log-undone = Deshecho
log-ignored = No cuenta: { $why }
log-set-aside-title = No se pudo leer
log-set-aside-lead = Estas entradas guardadas se conservan como se encontraron y no cambian nada.

done-added = { $count ->
    [one] 1 pieza agregada
   *[other] { $count } piezas agregadas
 }
done-more = { $what }, y { $count } más
done-mended = Corregido: { $what }
done-again = Hecho otra vez: { $what }
done-from-phone = De este teléfono: { $what }
log-back = Deshacer: { $what }
log-forward = Rehacer: { $what }
forgotten = Agregar algo que faltó
forgotten-what = Lo que faltó
forgotten-put-on = Al ahumador
forgotten-pulled = Fuera
which-piece = Era
when = Cuándo fue
mend-value = Era ({ $unit })
mend-store = Guardar
mend-leave = Dejarlo como estaba
mend-lost = { $count ->
    [one] 1 entrada más ya no contaría.
   *[other] { $count } entradas más ya no contarían.
 }
mend-refused = No puede ser: { $why }.

entry-pit-target = Ahumador puesto a { $temperature }
entry-ambient = Aire donde reposa: { $temperature }
entry-dinner = Cena a { $time }
entry-dinner-none = Cena sin hora fija
entry-pull-target = Temperatura para sacar: { $temperature }
entry-pull-target-piece = { $piece }: temperatura para sacar { $temperature }
entry-proof-rule = Comprobación: { $rule }
entry-set-out = { $piece } agregada: { $facts }
entry-piece-changed = { $piece } ahora es: { $facts }
entry-taken-away = { $piece } quitada
entry-put-on = { $piece }: al ahumador
entry-taken-out = { $piece }: fuera del refrigerador
entry-back-in-fridge = { $piece }: de vuelta en el refrigerador
entry-pit-read = El ahumador marca { $temperature }
entry-read-instant = { $piece }: { $temperature }
entry-read-leave-in = { $piece }: { $temperature }, sonda fija
entry-read-two = { $reading }, menor de 2
entry-second-place = El segundo punto no es menor
entry-second-place-piece = { $piece }: el segundo punto no es menor
entry-vouched = Lectura confirmada
entry-seated = { $piece }: sonda fija puesta aquí
entry-lid = Tapa abierta { $span }
entry-pulled = { $piece }: fuera del ahumador
entry-covered = { $piece }: con papel aluminio
entry-packed = { $piece }: a la mesa o a la bolsa
entry-out-of-fridge = La carne está fuera del refrigerador
entry-season = Piezas sazonadas
entry-light-fire = Fuego encendido
entry-start-pit = Ahumador encendido
entry-feed-fire = Fuego con combustible
entry-pit-kind = Tipo de ahumador: { $kind }
entry-rack = Lugares de la parrilla elegidos
entry-habits = Tiempos del ahumado elegidos
entry-style = Forma de cargar elegida
entry-tonight = { $piece } es para esta noche
entry-later = { $piece } es para después
entry-tolerances = Tolerancias de los termómetros elegidas
entry-check-risk = Riesgo de medir tarde elegido
entry-thermometer = { $thermometer }, prueba: { $offset }
entry-thermometer-replaced = { $thermometer }: cambiado
entry-prompt-dismissed = Limpio
entry-prompts-on = Recordatorios de limpieza activados
entry-prompts-off = Recordatorios de limpieza desactivados
entry-clock-jumped = El reloj del teléfono saltó
entry-clock-unwatched = El teléfono durmió o se cambió su reloj: el tiempo a temperatura empieza de nuevo
entry-undone = Deshecho: { $what }
entry-other = Otra entrada

problem-unknown-piece = esa pieza nunca se agregó
problem-not-on-yet = la pieza todavía no estaba en el ahumador
problem-already-on = la pieza ya estaba en el ahumador
problem-already-off = la pieza ya había salido
problem-already-packed = la pieza ya estaba servida o empacada
problem-unknown-reading = la lectura ya no está
problem-too-late = llegó demasiado después de la lectura
problem-impossible-value = su valor no es posible
problem-in-the-future = todavía no pasa
problem-other = ahí no tiene sentido

## Alarms
alarms = Alarmas
alarms-more = { $count ->
    [one] y 1 más
   *[other] y { $count } más
}
alarm-past = Es probable que se haya pasado: { $what }
alarm-other = El ahumado te necesita
alarm-late = Era hace { $span }
alarm-snooze = Aplazar 5 min
alarm-go = Ir
alarm-done = Ya vi
alarms-elsewhere = Alarmas de otro ahumado
alarm-elsewhere = Ahumado de { $cook }: { $what }

## Curves
curves-title = Curvas
curves-none = Todavía no hay nada en el ahumador.
curves-next = {" "}· siguiente
zoom = Cuánto se muestra
zoom-whole = Todo
zoom-hour = 1 hora
zoom-half-hour = 30 min
curve-pull = A { $temperature } probablemente { $window }
curve-readings = { $count ->
    [0] Aún sin lectura
    [one] 1 lectura
   *[other] { $count } lecturas
 }
curve-pit = { $temperature } a { $time }, puesto a { $aim }.
curve-pit-none = Todavía sin medir, puesto a { $aim }.
section-legend = Corte por la parte más gruesa: la cruz es el punto más frío, la línea es la sonda fija.

## Demo, new version, files
demo-title = Demostración a 60 veces la velocidad
demo-leave = Salir
start-demo = Ver un ahumado de muestra
version-title = Hay una versión nueva.
version-take = Actualizar
version-later = Luego
file-save = Guardar este ahumado como archivo
file-open = Abrir un ahumado de un archivo
file-saved = Guardado como { $name }.
file-too-long = El archivo es demasiado largo. Se aceptan hasta 8 MB.
file-unreadable = El teléfono no pudo leer este archivo. Elígelo de nuevo.
file-later = Una versión posterior de esta aplicación escribió el archivo. Actualiza la aplicación para abrirlo.
file-too-many = El archivo tiene demasiadas entradas. Se aceptan hasta { $most }.
file-no-cook = No es un ahumado guardado por esta aplicación. Se acepta un archivo .json de “Guardar este ahumado como archivo”.
file-no-bags = No es un archivo de bolsas guardado por esta aplicación. Se acepta un archivo .json de “Guardar las bolsas como archivo”.
file-refused = El teléfono no aceptó el archivo.

## Storage trouble
trouble-unstored = { $count ->
    [one] 1 entrada todavía no está guardada.
   *[other] { $count } entradas todavía no están guardadas.
 }
trouble-slow = El teléfono tarda en guardar.
trouble-kept = El ahumado sigue, la aplicación lo sigue intentando y el navegador tiene otra copia.
trouble-not-kept = El ahumado sigue y la aplicación lo sigue intentando, pero guarda el ahumado como archivo antes de cerrar esta página, o se pierden.
trouble-taken-along = Se conservan al volver a cargar esta página.
trouble-denied = Este navegador no guarda nada de esta página (ventana privada, o almacenamiento desactivado).
trouble-full = El teléfono ya no tiene espacio.
trouble-busy = El almacenamiento no responde. Cierra otras ventanas de Pull Order.
trouble-lost = El navegador perdió su almacenamiento y lo recupera al volver a cargar esta página.
trouble-replaced = Hay una versión más nueva de Pull Order abierta en otra ventana. Cierra esta.
trouble-taken = Otra ventana guardó otra cosa en este lugar.
trouble-failed = Falló el almacenamiento del teléfono.
trouble-details = Lo que dice el navegador
set-aside-why = Qué tenía de malo
trouble-reload = Volver a cargar

## More, settings
more-title = Más
more-this-cook = Este ahumado
more-kitchen = Cocina
more-this-phone = Este teléfono
settings-title = Ajustes
settings-temperature = Temperatura
settings-weight = Peso
settings-length = Grosor
settings-look = Apariencia
look-light = Claro
look-dark = Oscuro
look-sun = Sol
look-auto = Como el teléfono
settings-hand = Mano
hand-right = Derecha
hand-left = Izquierda
settings-language = Idioma
language-en = English
language-es = Español
more-set-out = Piezas y plan
more-cautions = Precauciones
more-settings = Ajustes
more-end = Ir a la pantalla de inicio
more-new = Nuevo ahumado
more-data = Todo se queda en este teléfono y en este navegador; nada se envía a ningún lado. Borrar los datos del navegador de este sitio lo borra todo: así se elimina. Guarda un ahumado como archivo para conservarlo.

## Cautions
cautions-title = Precauciones
caution-readings-title = Solo las lecturas comprueban una pieza
caution-readings = Un pronóstico te dice cuándo mirar. Nunca demuestra que una pieza es segura. Solo lo hace tu termómetro.
caution-instant-title = La temperatura que comprueba
caution-instant = El pollo es seguro en cuanto marca { $rule } en la parte más gruesa.
caution-every-title = Cada pieza, dos puntos
caution-every = Mide cada pieza por separado con el termómetro de lectura instantánea: de lado, con la punta en el centro de la parte más gruesa, y espera a que el número se estabilice. Al menos dos puntos; cuenta el menor. Una sonda fija te dice cuándo mirar; no comprueba nada.
caution-clean-title = Manos limpias, termómetro limpio
caution-clean = Lávate las manos y lava la tabla y el termómetro entre lo crudo y lo cocido. Limpia la sonda después de medir una pieza que aún no está. Usa un plato limpio al sacar.
caution-codes-title = Las normas de tu lugar van primero
caution-codes = Si una norma sanitaria de tu lugar dice otra cosa, sigue esa norma y no esta aplicación.
caution-licence-title = Para vender o para un banquete
caution-licence = Cocinar para vender, o para invitados que pagan, exige las prácticas que pide tu licencia. Esta aplicación no las sustituye.
caution-thermometer-title = Confía en el termómetro solo hasta cierto punto
caution-thermometer = Sigue las instrucciones del fabricante. Pruébalo en agua con hielo y en agua hirviendo antes de confiar en él.
caution-care-title = Más cuidado con algunas personas
caution-care = Los niños pequeños, las embarazadas, los adultos mayores y las personas con defensas bajas se enferman más fácil. Si tienes duda, cocina más.
caution-knows-title = Lo que esta aplicación sabe
caution-knows = Solo sabe lo que escribes, y solo de pechugas sin hueso ni piel. El pronóstico sale de un modelo de calor con sus propios errores; el viento, una forma rara o un peso equivocado lo desvían.
caution-cannot-title = Lo que esta aplicación no puede saber
caution-cannot = No puede saber si la sonda estaba en el punto más frío, en la pieza correcta o bien leída, cómo se guardó antes la carne, ni qué pasó en su superficie o después del ahumado. Tampoco distingue un reloj adelantado de un teléfono dormido: después de cualquiera de los dos, el tiempo a temperatura empieza de nuevo.

## Safety: rule, thermometers, clocks, proof
more-safety = Regla y termómetros
more-thermometer = Probar un termómetro
safety-title = Seguridad
safety-lead = Las lecturas comprueban una pieza, y nada más lo hace. Elige para este ahumado qué debe mostrar una lectura.
safety-rule = Qué comprueba una pieza
safety-rule-own = Una temperatura mayor
safety-rule-held = Tiempo a temperatura
safety-rule-now = En uso: { $rule }.
safety-source = Fuente: { $source }.
rule-instant = { $temperature } al momento
rule-held = tiempo a temperatura, { $fat }% de grasa
rule-instant-text = Una lectura de { $temperature } o más en la parte más gruesa, la menor de dos puntos. La regla de siempre.
rule-own-text = Tu propia temperatura en lugar de { $temperature }, nunca menor.
rule-own-field = Tu temperatura ({ $unit })
rule-own-use = Comprobar con esta temperatura
rule-held-text = Una temperatura menor mantenida el tiempo suficiente. El tiempo cuenta solo entre dos lecturas instantáneas de la misma pieza, cada una la menor de dos puntos, con no más de { $gap } entre ellas, y a la menor de las dos. Mantén la aplicación a la vista: si el teléfono se duerme, el tiempo empieza de nuevo. { $instant } también comprueba aquí al momento.
rule-held-caution = La agencia que publica esta tabla no da por validado para la superficie el calor seco de un ahumador sin control de humedad: en una superficie seca, la Salmonella aguanta más calor del que supone la tabla. Si tienes duda, usa { $instant }.
rule-held-fat = Grasa en la carne
rule-held-fat-5 = 5%
rule-held-fat-12 = 12%, o no se sabe
rule-held-rows = Cuánto tiempo a qué temperatura
rule-held-row = { $temperature }: { $dwell }
rule-held-use = Lo sé; comprobar con la tabla
safety-thermometers = Termómetros
safety-tolerance-hint = Cuánto puede fallar cada uno, hacia arriba o hacia abajo: el dato del fabricante.
safety-tolerance-instant = Lectura instantánea ({ $unit })
safety-tolerance-leave-in = Sonda fija ({ $unit })
safety-tolerance-pit = Ahumador ({ $unit })
safety-checks = Mediciones y recordatorios
safety-risk = Probabilidad de haberse pasado al medir ({ $unit })
safety-risk-hint = Menos significa medir antes y más veces.
safety-prompts = Recordatorios de limpieza
unit-percent = %
unit-ft = ft
unit-m = m

check-title = Probar un termómetro
check-lead = Sigue primero las instrucciones del fabricante. Un vaso lleno de hielo picado, completado con agua y removido, está a { $ice } en cualquier lugar. El punto de ebullición del agua depende de la altitud.
check-which = Termómetro que se prueba
check-ice = Marca en agua con hielo ({ $unit })
check-boiling = Marca en agua hirviendo ({ $unit })
check-altitude = Altitud ({ $unit })
check-altitude-bad = Se acepta una altitud de -450 m (-1,476 ft) a 5,500 m (18,045 ft).
check-boils-at = Allí el agua hierve a { $temperature }.
check-use = Usar esto desde ahora
check-both = Cuenta la menor de las dos pruebas.
check-now = { $thermometer } ahora: { $offset }
check-too-far = Falla por más de { $most }. Vuelve a probarlo con la punta en medio del agua y luego cambia la pila o el termómetro.
check-barred = Este termómetro falla más de lo que se puede corregir. Nada de lo que midió comprueba una pieza hasta que lo cambies o le cambies la pila.
check-replaced = Tiene pila nueva, o es otro
check-over-allowed = Un termómetro de cocina puede fallar por { $allowed } como máximo. Mejor una pila nueva u otro termómetro que una corrección.
offset-true = marca bien
offset-high = marca { $by } de más; cada lectura cuenta { $by } menos
offset-low = marca { $by } de menos; el pronóstico cuenta { $by } más, la comprobación no
reading-counted = { $shown }, cuenta como { $counted }

clocks = Relojes de seguridad
clock-of = { $pieces }: { $what }
clock-left = quedan { $left }
clock-over = { $over } de más
clock-raw = al ahumador o de vuelta al refrigerador a más tardar a { $time }
clock-raw-why = Cruda y fuera del refrigerador, contado desde { $since }. Dos horas como máximo; una con más de 90 °F (32 °C).
clock-raw-over = Estuvo cruda fuera demasiado tiempo. Tírala.
clock-warm-up = arriba de { $hot } a más tardar a { $time }
clock-warm-up-why = No consta arriba de { $hot } desde { $since }. Un ahumador lento o que se apaga deja la carne demasiado tiempo entre { $cold } y { $hot }.
clock-warm-up-over = Ya pasaron cuatro horas entre { $cold } y { $hot }. El calor no destruye todas las toxinas que dejan las bacterias: tírala.
clock-fridge = en el refrigerador a más tardar a { $time }
clock-fridge-why = Fuera del calor y no consta arriba de { $hot } desde { $since }.
clock-fridge-over = Lleva demasiado tiempo fuera para comerla o guardarla. Tírala.
clock-cool-70 = a { $to } a más tardar a { $time }
clock-cool-70-why = Enfriamiento, primer paso: desde { $from }, contado desde { $since }.
clock-cool-70-over = El primer paso tardó demasiado. Recaliéntala de inmediato a { $instant } o tírala.
clock-cool-41 = a { $to } a más tardar a { $time }
clock-cool-41-why = Enfriamiento, los dos pasos. Qué ayuda: cortarla, bolsas planas, agua con hielo.
clock-cool-41-over = El enfriamiento tardó demasiado. Tírala.
clock-expected = Pronóstico: a { $time }.
clock-expected-below = Pronóstico: abajo de { $hot } desde { $time }.
clock-not-expected = Pronóstico: no para entonces.
over-raw = Estuvo cruda y fuera del refrigerador demasiado tiempo; el límite era a { $time }. Tírala: el calor no destruye todas las toxinas que dejan las bacterias.
over-warm-up = Estuvo entre 41 °F y 140 °F (5 °C y 60 °C) más de cuatro horas en total, desde { $time }. Ya nada la comprueba. Tírala.
over-fridge = Estuvo fuera del refrigerador demasiado tiempo; el límite era a { $time }. Tírala.
over-cooling = Se enfrió demasiado despacio: el límite era a { $time }. Tírala.
over-processor = El FSIS deja a un procesador que lo registra tardar seis horas de 50 °F a 130 °F (10 °C a 54 °C). Esta aplicación no puede demostrarlo.

unproved = En reposo, todavía sin comprobar.
unproved-peak = Sin comprobar. Máximo aprox. { $temperature } a { $time }
short-not-read = Todavía no tiene lectura.
short-before = La última lectura es de antes de regresarla al ahumador.
short-packed = La última lectura se escribió después de empacarla.
short-future = La hora de la última lectura es posterior a cuando se escribió: un reloj está mal.
short-late = La última lectura se escribió demasiado después de tomarla.
short-copied = La última lectura se escribió en el mismo instante que la de otra pieza.
short-bad-thermometer = Se vio que el termómetro falla más de lo que se puede corregir.
short-leave-in = Una sonda fija muestra un solo punto. Usa el de lectura instantánea.
short-cool = La última lectura, { $reading }, está abajo de { $rule }.
short-fast = La última lectura es más alta de lo que la pieza puede estar a estas alturas. Mídela otra vez.
short-doubted = La última lectura no encaja con las demás, y no has dicho que es correcta.
short-contradicted = Una lectura posterior de { $reading } muestra un punto más frío.
short-one-place = La última lectura fue en un solo punto.
short-other = La última lectura no la comprueba.
proof-read-at = Mide dos puntos a { $time }, cuando debe estar más caliente: aprox. { $temperature } según el pronóstico.
proof-peak-gone = Estuvo más caliente cerca de { $time }. Mídela ahora; si ninguna lectura la comprueba, regresa al ahumador.
proof-peak-low = Según el pronóstico este reposo no llega a { $rule }.
proof-hold = Mantenida a { $temperature } o más desde { $since }. Una lectura a { $complete } que no sea menor la comprueba; mide a más tardar a { $by } o el tiempo empieza de nuevo.
proof-hold-keep = Mantenida a { $temperature } o más desde { $since }. Mide a más tardar a { $by } o el tiempo empieza de nuevo; no queda comprobada antes de { $complete }.
back-on = Otra vez al ahumador: aprox. { $middle }, según el pronóstico de { $low } a { $high }, hasta que el centro esté a { $rule }. Luego mídela otra vez.
back-on-unknown = Otra vez al ahumador hasta que una lectura de { $rule } la compruebe.
rest-lead-held = Según la tabla que elegiste, también la comprueba una temperatura menor mantenida el tiempo suficiente entre dos lecturas.

proposal-lowest = { $temperature } es lo mínimo para que el reposo la compruebe 19 de cada 20 veces.
proposal-take = Volver a { $temperature }
lethality = Pronóstico, solo informativo; no comprueba nada. Hasta ahora, aprox. { $cuts } de las { $asked } reducciones a la décima parte de Salmonella que se piden al pollo, del lado prudente ({ $source }).


## Alarms on this phone
more-alarms = Alarmas en este teléfono
on = Sí
off = No
alarms-title = Alarmas en este teléfono
alarms-lead = Con esta página al frente y la pantalla encendida, cada alarma llega a su hora. Con otra aplicación al frente, o la pantalla apagada, el teléfono puede detener la página en un minuto o antes. Lo que te perdiste llega en cuanto vuelves a mirar, y dice cuánto se retrasó.
alarms-backup = Un teléfono en silencio no suena: quita el modo silencio. Si te alejas del ahumador, pon también el temporizador del teléfono.
alarms-notify-not-offered = Este navegador no muestra notificaciones de esta página. En un iPhone hace falta la aplicación en la pantalla de inicio.
alarms-notify-not-asked = Una notificación muestra una alarma sobre otras aplicaciones, mientras el teléfono deje correr esta página.
alarms-notify-buttons = Una notificación muestra la alarma sobre otras aplicaciones, con posponer y hecho, mientras el teléfono deje correr esta página.
alarms-notify-ask = Permitir notificaciones
alarms-notify-granted = Las notificaciones están permitidas.
alarms-notify-refused = Las notificaciones están rechazadas. Se puede cambiar en los ajustes del teléfono para esta página.
alarms-awake = Este teléfono puede dejar la pantalla encendida mientras haya una pieza en el ahumador. Con poca batería puede que no.
alarms-not-awake = Este navegador no puede dejar la pantalla encendida. Alarga el tiempo de pantalla en los ajustes del teléfono.
alarms-install = En la pantalla de inicio los datos están más seguros, y la aplicación puede hacer más.
alarms-try = Probar mis alarmas
alarms-trying = Probando…
alarms-trial-title = Alarma de prueba
alarms-trial-snooze = Posponer
alarms-trial-done = Hecho
alarms-trial-body = Así se ve una alarma.
alarms-sound = Sonido
alarms-spoken = Avisos hablados
alarms-spoken-hint = Después del tono, una voz dice una vez lo que toca, para que no tengas que mirar el teléfono. Es la voz del propio teléfono y no necesita señal. Contesta la alarma y se calla.
alarms-spoken-try = Probar la voz
alarms-spoken-trial = Así suena un aviso hablado.
alarms-spoken-none = Este teléfono no tiene una voz en español que funcione sin conexión: no puede decir lo que toca. Quizá se pueda agregar una en los ajustes del teléfono.
alarms-stay-awake = Dejar la pantalla encendida
tried-sound = Sonó una melodía. Si no la oíste, sube el volumen del teléfono y quita el modo silencio.
tried-no-sound = El navegador no permitió sonido.
tried-vibration = El navegador dijo que vibraría. No todos los teléfonos lo hacen.
tried-no-vibration = Este teléfono no vibra para aplicaciones web.
tried-notification = Se mostró una notificación.
tried-no-notification = No se mostró ninguna notificación.
tried-awake = La pantalla puede quedar encendida.
tried-not-awake = La pantalla no puede quedar encendida ahora.
tried-kept = El navegador prometió conservar lo guardado.
tried-not-kept = El navegador no prometió conservar lo guardado. Guarda el ahumado como archivo para estar seguro.
tried-installed = La aplicación corre desde la pantalla de inicio.
tried-not-installed = La aplicación corre en una pestaña del navegador.

## Prompts
prompts = Manos y útiles limpios
prompt-probe = Limpia la sonda antes de la siguiente pieza.
prompt-plate = Trae un plato limpio para lo que saques.
prompt-done = Hecho

## Kitchen: before the cook and after the rest
kitchen-entry = Cocina: sazonador, porciones, bolsas
kitchen-due = { $count ->
    [one] Come ya 1 bolsa del refrigerador.
   *[other] Come ya { $count } bolsas del refrigerador.
 }
kitchen-past = { $count ->
    [one] A 1 bolsa del refrigerador ya se le pasó el día: tírala.
   *[other] A { $count } bolsas del refrigerador ya se les pasó el día: tíralas.
 }
kitchen-title = Cocina
kitchen-tabs = Partes de la cocina
kitchen-tab-bags = Bolsas
kitchen-tab-portions = Porciones
kitchen-tab-rub = Rub
kitchen-empty = Todavía no hay bolsas. Después del reposo, corta las piezas en porciones y empácalas aquí.
kitchen-may-be-deleted = Un iPhone puede borrar lo que guarda una página web después de una semana sin visitarla, y otros teléfonos cuando les falta espacio. Pon la aplicación en la pantalla de inicio, o guarda las bolsas como archivo de vez en cuando.
bags-save = Guardar las bolsas como archivo
bags-open = Abrir un archivo de bolsas
bags-taken-in = Las bolsas del archivo están en la lista.
kitchen-weight = { $weight } en bolsas. Come primero la de arriba.
kitchen-to-portions = Porcionar y empacar
kitchen-to-chill = Cuánto tardan en enfriarse
kitchen-to-labels = Imprimir etiquetas
kitchen-reminders = Recordatorios para mi calendario
kitchen-no-reminders = No hay nada que recordar.
kitchen-gone = Usadas y tiradas
grams = { $count } g
hours = { $count } h
days = { $count } días
teaspoons = { $count } cdita.
tablespoons = { $count } cda.
form-whole = entera
form-sliced = en rebanadas
form-chunked = en trozos
form-shredded = deshebrada
place-fridge = Refrigerador
place-freezer = Congelador
goes-tonight = Esta noche
packing-plain = Bolsa normal
packing-covered = En caldo o salsa
packing-vacuum = Al vacío
cooling-fridge = En el refrigerador
cooling-on-ice = Sobre hielo
cooling-ice-bath = En agua con hielo

bag-number = Bolsa { $number }
bag-name = { $name }, bolsa { $number }
bag-facts = { $weight }, { $form }. { $packing }. { $place }. Se cocinó el { $cooked }.
bag-eat-by = comer a más tardar el { $day }
bag-best-by = mejor a más tardar el { $day }
bag-past = Ya pasó su día: tírala
bag-does-not-keep = no la comas: tírala
bag-unproved = Ya nada comprueba esta carne: después se deshizo o se corrigió una lectura del ahumado. No la comas hasta que la bitácora esté bien.
bag-throw-which = Tirar la bolsa { $number }
bag-due = Cómela ya: su último día está por llegar.
bag-used = Usada
bag-used-which = Usada: bolsa { $number }
bag-throw-away = Tirar
bag-to-fridge = Pasar al refrigerador
bag-to-freezer = Pasar al congelador
bag-reheat = Recalentar esta bolsa
bag-not-packed = Al final no se empacó
bag-gone = Esta bolsa se usó o se tiró.
bag-unknown = Este teléfono no tiene esa bolsa.
done-packed = { $count ->
    [one] 1 bolsa empacada
   *[other] { $count } bolsas empacadas
 }
done-moved = Bolsa { $number } movida: { $place }. La fecha impresa en ella ya no vale.
done-used = Bolsa { $number } usada
done-thrown = Bolsa { $number } tirada
done-weighed = Peso guardado
done-rub = Sazonador guardado
remind-use = Usar a más tardar mañana: { $bag }
remind-throw = Tirar: { $bag }
remind-freezer = Usar pronto, del congelador: { $bag }

label-title = Etiqueta
label-what = Pechuga de pollo, { $form }
label-cooked = Se cocinó el { $cooked }
label-bath = Baño de agua { $bath }, { $minutes } min
label-bath-flat = Baño de agua { $bath }, { $minutes } min, acostada
label-code = Abrir la pantalla de recalentar de esta etiqueta
label-hint = Escribe estas líneas en la bolsa, o imprímelas. El código abre cómo recalentar esta bolsa, aun sin señal. El tiempo de baño vale para la bolsa como está ahora: congelada tarda más que fría.
label-unread = Etiqueta sin leer
label-later = Esta etiqueta es de una versión posterior de la aplicación. Actualízala para leerla.
label-damaged = El código de esta etiqueta está dañado. Elige la bolsa en la lista.
labels-title = Imprimir etiquetas
labels-which = Qué bolsas
labels-today = Empacadas hoy
labels-all = Todas
labels-sheet = Hoja
labels-sheet-drawn = La hoja tal como se imprime
sheet-letter-thirty = Carta, 30
sheet-letter-ten = Carta, 10
sheet-a4-twenty-one = A4, 21
sheet-a4-fourteen = A4, 14
labels-gone = Etiquetas ya usadas
labels-gone-hint = Cuántas faltan arriba en una hoja ya empezada.
labels-none = No hay bolsas que etiquetar.
labels-used-up = En esa hoja no queda ninguna etiqueta. Escribe menos, o 0 para una hoja nueva.
labels-print = { $count ->
    [one] Imprimir 1 etiqueta
   *[other] Imprimir { $count } etiquetas
 }
labels-print-hint = Imprime en papel { $paper } a tamaño real (100%), sin márgenes. Prueba antes en papel normal.
paper-letter = carta
paper-a4 = A4
labels-no-print = Este navegador no puede imprimir. Escribe la etiqueta a mano.

portions-title = Porciones
portions-none = Todavía no hay piezas comprobadas. Llegan aquí cuando una lectura las comprueba; también puedes escribir piezas ya cocidas.
portions-estimate = { $count ->
    [one] 1 pieza, aprox. { $weight } ya cocida, con { $spread } de más o de menos.
   *[other] { $count } piezas, aprox. { $weight } ya cocidas, con { $spread } de más o de menos.
 }
portions-weighed = { $count ->
    [one] 1 pieza, { $weight } ya cocida.
   *[other] { $count } piezas, { $weight } ya cocidas.
 }
portions-to-come = { $count ->
    [one] 1 pieza todavía sin comprobar: aprox. { $weight } ya cocida, con { $spread } de más o de menos.
   *[other] { $count } piezas todavía sin comprobar: aprox. { $weight } ya cocidas, con { $spread } de más o de menos.
 }
portions-tonight-left = Esta noche se lleva { $tonight }; quedan aprox. { $left }.
portions-tonight-short = Esta noche pide { $tonight }: faltan aprox. { $short }.
portions-weighings = { $count ->
    [one] La estimación cuenta 1 pesada tuya.
   *[other] La estimación cuenta { $count } pesadas tuyas.
 }
portions-source = Lo que tiene una porción: USDA Standard Reference 28, pechuga cruda, por el peso en crudo; se supone que solo se pierde agua. La sal cuenta el sazonador y la solución añadida elegidos en Rub.
portions-weigh = Todas juntas en la báscula ({ $unit })
portions-weigh-hint = Déjalo vacío para usar la estimación. Cada pesada mejora las próximas.
portions-type-pieces = Escribir piezas ya cocidas
portions-how-many = Cuántas
portions-cooked-each = Peso ya cocida de cada una ({ $unit })
portions-add-cooked = Agregar piezas cocidas
portions-cooked-hours = Horas desde que salió del calor
portions-cooked-hours-hint = Tiene que haber llegado al refrigerador en dos horas y haberse quedado ahí. La carne que no, no se guarda: tírala.
portions-clear-typed = Quitar las piezas escritas
portions-typed-piece = Pieza escrita { $number }
portions-tap-hint = Toca una pieza para pasarla a la comida siguiente. Las demás se reparten otra vez, con lo mínimo de sobra.
portions-move = pasar a { $to }
portions-dinner-name = Cena
portions-rest-name = Piezas enteras
portions-new-name = Lonches
portions-change-which = Cambiar { $name }
portions-done = Listo
portions-done-which = Listo: { $name }
portions-add = Agregar una comida
portions-remove = Quitar esta comida
portions-choose-again = Que la aplicación reparta otra vez
portions-fixed = lo elegiste
portions-left = Sin usar
portions-name = Nombre
portions-wanted = Cuánto
wanted-servings = Porciones
wanted-pieces = Piezas
wanted-rest = Lo que queda
portions-each = Cada porción ({ $unit })
portions-wish = { $goes }: { $amount }, { $form }
portions-rest-of = lo que quede
portions-form = Corte
portions-goes = A dónde va
portions-bags = Bolsas (vacío: una para cada una)
portions-thickness = Grosor de la bolsa ({ $unit })
portions-packing = En qué
portions-servings-of = { $count } × { $each }
portions-pieces-of = { $count ->
    [one] 1 pieza
   *[other] { $count } piezas
 }
portions-serving = Recibe { $weight }: { $count } × { $each }
portions-gets = { $count ->
    [one] Recibe 1 pieza, { $weight }
   *[other] Recibe { $count } piezas, { $weight }
 }
portions-short = Recibe { $weight }, faltan { $short }
portions-pieces-short = Recibe { $weight }, faltan { $count } piezas
portions-nothing = No recibe nada
portions-content = Una porción, aprox.: { $energy } kcal, { $protein } g de proteína, { $fat } g de grasa, { $salt } g de sal
portions-no-lots = No hay a dónde llevar las piezas. Agrega una comida.
portions-too-many = Es demasiado a la vez. Se aceptan hasta 40 piezas y 12 comidas.
portions-bad-weight = Cada pieza y cada porción deben pesar más de 0.
pack-title = Bolsas por empacar
pack-all = { $count ->
    [one] Empacar 1 bolsa
   *[other] Empacar { $count } bolsas
 }
pack-done = Estas bolsas ya están en tu lista.
pack-too-late = Demasiado tiempo fuera del frío: tírala
pack-unproved = { $pieces }: dejó de estar comprobada después de servirla o empacarla, o nunca lo estuvo. No va a ninguna bolsa: no la comas si no se corrige la bitácora.
pack-again = Empacarlas otra vez
pack-demo = La demostración no empaca bolsas.

chill-title = Enfriar
chill-none = No hay bolsas por enfriar. Corta primero las porciones.
chill-core = Centro al embolsar ({ $unit })
chill-core-hint = Mide la pieza más gruesa. Los tiempos son de un modelo, no una lectura.
chill-batch = { $what }: { $count } × { $weight }
chill-times = { $middle } en { $first }, { $cold } en { $second }.
chill-keeps = Cumple el límite de dos pasos.
chill-order-title = Empaca en este orden
chill-where = Dónde se enfría
chill-minutes = Minutos para empacar una bolsa
chill-in-time = En el frío a más tardar a { $by }. En este orden queda empacada a { $done }.
chill-late = Debía estar en el frío a { $by }: { $span } tarde.
chill-helps-title = Lo que ayuda
chill-helps-split = Rebana las piezas gruesas, o pon menos en cada bolsa.
chill-helps-flat = Aplana las bolsas, a una pulgada (25 mm) o menos, y ponlas una al lado de otra.
chill-helps-ice = Las bolsas selladas en agua con hielo, removida de vez en cuando, se enfrían varias veces más rápido que en el refrigerador.

reheat-which = Recalentar: { $bag }
reheat-facts = { $weight }, { $form }, se cocinó el { $cooked }.
reheat-not-here = Esta bolsa no está en la lista de este teléfono. Todo lo de abajo sale de su etiqueta.
reheat-time = En un baño de agua a { $bath }
reheat-likely = Probable: { $likely } hasta { $core } en el centro; el tiempo largo alcanza hasta para una bolsa 12% más gruesa. Si entra ahora, lista a { $ready }. Mide el centro.
reheat-from = Viene
reheat-chilled = Fría
reheat-frozen = Congelada
reheat-bath = Baño de agua ({ $unit })
reheat-core = Centro deseado ({ $unit })
reheat-thickness = Grosor de la bolsa ({ $unit })
reheat-thickness-hint = De la bolsa plana, o de una pieza entera en lo más grueso. Es lo que más decide.
reheat-bath-too-cool = El baño debe estar al menos 3 °F (2 °C) más caliente que el centro deseado.
reheat-bath-too-hot = El agua hierve a 212 °F (100 °C). Se acepta un baño hasta ahí.
reheat-core-bad = Se acepta un centro de 135 °F a 185 °F (57.3 °C a 85 °C). Menos no basta para conservarlo caliente.
reheat-too-long = Tardaría más de un día. Usa un baño más caliente o una bolsa más delgada.
reheat-bag-bad = Se acepta una bolsa de 10 g a 5 kg y de 5 a 100 mm (0.2 a 4 in) de grosor.
reheat-thaw-title = Descongelar antes
reheat-thaw = En el refrigerador aprox. { $fridge }, sobre un plato. En agua fría aprox. { $water }, cambiada cada media hora, y de ahí directo a calentar.
reheat-other-title = Sartén u horno
reheat-pan-stir = Sartén: fuego bajo, tapada, un chorrito de caldo; revuelve hasta que el centro marque { $advised }.
reheat-pan-turn = Sartén: fuego bajo, tapada, un chorrito de caldo; voltéala hasta que el centro marque { $advised }.
reheat-oven = Horno: { $oven } o más, tapado, un chorrito de caldo, hasta que el centro marque { $advised }.

caution-leftovers = El USDA pide { $advised } para las sobras. El FDA Food Code permite menos solo para lo que se cocinó y enfrió bien y se sirve de inmediato a quien lo pidió.
caution-serve-or-hold = Sirve de inmediato, o mantenlo a 140 °F (60 °C) o más. Recalienta solo lo que te vas a comer: no lo enfríes otra vez.
caution-slow-to-warm = Tarda más de cuatro horas en llegar a 135 °F (57 °C). Descongélala antes, o usa una bolsa más delgada.
caution-vacuum = Al vacío: sin aire, Clostridium botulinum puede crecer a más de 38 °F (3 °C), sin oler. Guárdala a 38 °F o menos, o congelada. Descongélala en el refrigerador, o caliéntala congelada.
caution-two-hours = En menos de dos horas desde el ahumador, a un refrigerador a 40 °F (4 °C) o menos; en menos de una si hace más de 90 °F (32 °C).
caution-first-step = Tarda más de dos horas de 135 °F a 70 °F (57 °C a 21 °C): córtala, extiéndela más delgada, o usa hielo.
caution-second-step = Tarda más de seis horas de 135 °F a 41 °F (57 °C a 5 °C) en total: usa hielo o una bolsa más delgada.
caution-past-eat-by = Ya pasó su fecha. Tírala, huela como huela.
caution-too-late = Llegó al frío demasiado tarde. Tírala, huela como huela.
caution-cooling-over = Ya se enfrió demasiado despacio: dos horas hasta 70 °F (21 °C), seis hasta 41 °F (5 °C) en total. Tírala.
caution-middle-not-seen = Lleva más de dos horas por debajo de 135 °F (57 °C). Si nadie leyó 70 °F (21 °C) en ese tiempo, tírala.
caution-slow-to-reheat = Tarda más de dos horas en calentarse. Descongélala antes, o usa una bolsa más delgada o agua más caliente.
caution-slow-to-thaw = Es demasiado tiempo en agua más caliente que un refrigerador. Descongélala en el refrigerador.
caution-days-unknown = Esta etiqueta no dice cuántos días estuvo en el refrigerador antes de congelarse. Cuatro días en total, antes y después, es lo máximo.
caution-local-code = Las normas sanitarias de tu lugar van antes que todo lo de aquí.

rub-title = Rub o sazonador
rub-own-name = Mi sazonador
rub-another = Otro sazonador
rub-new-name = Su nombre
rub-new = Sazonador nuevo
rub-measure = Una parte es
rub-by-volume = Una cuchara o taza
rub-by-weight = Un peso
rub-parts = Partes
rub-parts-of = Partes: { $parts }
rub-spice = Ingrediente
rub-ingredient = Tu nombre para él
rub-blend-salt = Sal que trae (% en peso)
rub-blend-hint = { $sodium } g de sodio son { $salt } g de sal.
rub-add = Agregar al sazonador
rub-take-out = Quitar
rub-take-out-which = Quitar { $name }
rub-empty = Todavía no lleva nada. Agrega cada ingrediente con sus partes.
rub-salt-share = { $share }% de sal en peso
rub-heavy-fact = Los sazonadores con menos de 20% de sal aguantan una capa gruesa (práctica común, sin fuente).
rub-mix-title = Para mezclar
rub-for-cook = { $count ->
    [one] Para el ahumado abierto: 1 pieza, { $weight } en crudo
   *[other] Para el ahumado abierto: { $count } piezas, { $weight } en crudo
 }
rub-no-pieces = No hay piezas por sazonar.
rub-bad = Las partes deben ser 0 o más, y la sal de una mezcla, de 0 a 100%.
solution-title = ¿Se vendió con solución añadida?
solution-none = No
solution-stated = Sí
solution-unknown = No sé
solution-share = Solución añadida (%, del empaque)
solution-hint = El empaque dice algo como «contiene hasta 15% de una solución». El «agua retenida» es agua sola: no trae sal.
solution-holds = Ya trae unos { $held } g de sal por cada 100 g. El sazonador y la salmuera de abajo la cuentan. (Estimación: se supone que la solución tiene 5% de sal.)
solution-may-hold = Puede que ya traiga { $held } g de sal por cada 100 g, como con 15% de solución. El sazonador y la salmuera de abajo la cuentan. (Estimación: se supone que la solución tiene 5% de sal.)
rub-coat = Capa
coat-light = Ligera
coat-medium = Media
coat-heavy = Gruesa
rub-limit = Máximo de sal (g por 100 g de carne)
rub-total = Sazonador para todas: { $weight } g
rub-level = Sal: { $level } g por 100 g de carne; { $saltiest } g en la pieza más pequeña.
rub-oil = Aceite para que se pegue: { $oil }
rub-over = La pieza más pequeña lleva { $saltiest } g de sal por 100 g; tu límite es { $limit } g. Pon una capa más ligera o menos sal.
brine-title = Salmuera
brine-none = Sin salmuera
brine-dry = Salmuera seca
brine-wet = Salmuera líquida
brine-level = Sal deseada (g por 100 g)
brine-water = Agua ({ $unit })
brine-salt = Pesa { $grams } g de sal
brine-between = de { $quick } a { $slow }
brine-outer = Mitad de fuera sazonada: { $span }
brine-middle = Sazonada hasta el centro: { $span }
brine-guide = Una guía según la pieza más gruesa: la sal avanza a velocidades muy distintas. Guárdala en el refrigerador, y no le pongas sal al sazonador.
brine-held-already = El pollo ya trae esa sal. Sáltate la salmuera.
brine-outlasts = El centro puede tardar más de lo que dura el pollo crudo en el refrigerador (dos días). Cocínalo a más tardar entonces.
spice-table-salt = Sal fina
spice-coarse-salt = Sal gruesa
spice-flake-salt = Sal en escamas
spice-sugar = Azúcar
spice-brown-sugar = Azúcar morena
spice-paprika = Paprika
spice-black-pepper = Pimienta negra
spice-garlic = Ajo en polvo
spice-onion = Cebolla en polvo
spice-chilli = Chile en polvo
spice-cumin = Comino
spice-cayenne = Pimienta de cayena
spice-mustard = Mostaza en polvo
spice-other = Otra especia
spice-blend = Una mezcla con sal
