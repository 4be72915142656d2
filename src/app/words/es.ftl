# Todos los textos de la aplicación, en español. Una pieza es una pechuga.

## Names and small words
piece = Pieza { $number }
pieces = Piezas { $numbers }
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
back = Volver
undo = Deshacer
redo = Rehacer
change = Cambiar
today = Hoy
tomorrow = Mañana

## Stages
stage-raw = Cruda
stage-resting = En reposo, sin comprobar
stage-proved = Comprobada
stage-packed = Servida o envasada

## Tabs
tabs = Partes de la aplicación
tab-cook = Asado
tab-rest = Reposo
tab-log = Diario
tab-more = Más

## Start
start-title = Pull Order
start-lead = Cada pechuga tiene su momento. Prepáralas, escribe lo que marca tu termómetro y retira cada una a su hora.
start-new = Nuevo asado
start-continue = Seguir con este asado
start-earlier = Asados anteriores
start-caution = Un pronóstico nunca demuestra que el pollo es seguro. Solo lo hace tu termómetro.
cook-begun = Asado del { $when }
new-cook-ask = ¿Empezar otro asado?
new-cook-on = En el ahumador: { $pieces }.
new-cook-resting = En reposo: { $pieces }.
new-cook-alarms = Sus alarmas siguen sonando junto a las del nuevo. Lo encuentras otra vez en Asados anteriores.
new-cook-go = Empezar un asado nuevo
new-cook-stay = Seguir con este asado

## Set-out
set-out-title = Preparar
set-out-add-title = Añadir piezas
set-out-count = Cuántas iguales
set-out-count-less = Una menos
set-out-count-more = Una más
set-out-weight = Peso de cada una ({ $unit })
set-out-pack = Peso del paquete de { $count } ({ $unit })
set-out-weighed = Qué se pesa
set-out-each = Pesar cada pieza
set-out-whole-pack = Pesar el paquete
set-out-thickest = Parte más gruesa ({ $unit })
set-out-thickest-hint = Altura tal como está puesta. Déjalo vacío si no la mediste; medida, el pronóstico es mucho mejor.
set-out-start = Temperatura al entrar ({ $unit })
set-out-start-hint = Por debajo de 32 °F (0 °C) está congelada: descongélala antes en la nevera.
set-out-middle = Centro
middle-thawed = Descongelado
middle-icy = Aún con hielo
set-out-shape = Corte
shape-natural = Natural
shape-even = Aplanada
shape-thick = Muy gruesa
set-out-add = { $count ->
    [one] Añadir 1 pieza
   *[other] Añadir { $count } piezas
 }
set-out-remove = Quitar { $piece }
set-out-facts = { $weight }, { $thickest } de grueso
set-out-facts-weight = { $weight }
set-out-facts-icy = { $facts }, centro aún con hielo
set-out-cook-title = Este asado
set-out-pit = Ahumador en la parrilla ({ $unit })
set-out-pull = Retirar a ({ $unit })
set-out-pull-hint = Antes de 74 °C (165 °F): el centro sube todavía un poco al retirar.
set-out-ambient = Aire donde reposa ({ $unit })
set-out-dinner = Cena a las
set-out-dinner-clear = Sin hora fija
set-out-put-on = { $count ->
    [one] Poner la pieza
   *[other] Poner las { $count }
 }
set-out-units = Unidades
units-customary = °F · oz · in
units-metric = °C · g · mm
set-out-wash = Lávate las manos y lava la tabla y el termómetro después de tocar pollo crudo.

## Messages beside a field
bad-blank = Todavía no hay nada escrito. Escribe un número como { $example }.
bad-number = Esto no es un número. Escribe cifras, con un punto o una coma decimal como mucho, por ejemplo { $example }.
bad-comma = 1,234 se puede leer de dos maneras. Escribe 1234 o 1.234.
bad-range = Se acepta entre { $low } y { $high }.
bad-dinner-past = Las { $time } de hoy ya han pasado. Elige una hora más tarde, o Mañana.
bad-dinner-blank = Elige una hora, o Sin hora fija.
bad-time-blank = Elige una hora.
bad-not-on = { $piece } todavía no está en el ahumador. Ponla primero; lo que escribiste se queda aquí.
bad-packed = { $piece } está servida o envasada y ya no admite lecturas. Deshazlo antes en el diario.

## Live cook
live-title = Asado
live-due-now = Ahora
live-all-done = Todas las piezas están servidas o envasadas.
live-thinking = Calculando el próximo paso…
live-order = Orden de retirada
live-off = Fuera del ahumador
live-dinner = Cena { $time }
live-dinner-late = { $span } tarde
live-dinner-early = { $span } antes
live-dinner-on-time = a tiempo
live-no-dinner = Cena sin hora
live-no-dinner-hint = fijarla
live-then = Luego, { $time }: { $what }
live-then-now = Luego: { $what }
live-pit = Ahumador { $temperature }
live-pit-none = Sin leer
live-pit-aim = fijado a { $temperature }
live-core-now = centro ahora, pronóstico
live-core-band = { $low }–{ $high }
live-pull-window = Sale a { $temperature }, { $window }
live-pull-far = Aún sin hora de retirada
live-no-reading = Aún sin lectura
live-read-instant = { $temperature }, { $age }
live-read-leave-in = { $temperature } sonda fija, { $age }
live-peak = Máximo de unos { $temperature } a las { $time }
live-proved-by = Comprobada: { $temperature } leídos a las { $time }
live-misplaced = La sonda fija probablemente no está en el punto más frío, a unos { $length } de él.

## What to do next
do-pull = Retira { $pieces }
do-check = Mide { $pieces }
do-cover = Cubre { $pieces } con papel de aluminio flojo
do-second-place = Prueba otro punto en { $pieces }
do-prove = Lee { $pieces } en reposo
do-put-back = Vuelve a poner { $pieces }
do-reseat = Recoloca la sonda fija de { $pieces }
do-read-pit = Lee el ahumador
do-put-on = Pon { $pieces }
do-set-out = Prepara las piezas
do-pack = Porciona y empaca { $pieces }

do-out-of-fridge = Saca la carne de la nevera
do-season = Sazona las piezas
do-light-fire = Enciende el fuego
do-feed-fire = Alimenta el fuego

why-chore = Para que la cena esté a su hora.
why-check = Parte más gruesa, la menor de dos lecturas.
why-cover = El papel flojo guarda el calor sin cocer al vapor.
why-second-place-of = { $piece } marcó { $temperature } en un solo punto. Un solo punto no la comprueba. Cuenta el menor de dos.
why-second-place-figure = { $piece } marcó { $temperature } en un solo punto, cerca del límite. Escribe la menor de las dos cifras.
why-prove = Cerca del máximo: parte más gruesa, el menor de dos puntos.
why-put-back = El máximo ha pasado y ninguna lectura la comprueba.
why-reseat = Empújala hasta el centro de la parte más gruesa.
why-read-pit = Hace rato que no se lee.
why-put-on = Cruda y preparada.
why-set-out = Pesa cada una.
why-pack = Comprobada por su lectura.

act-read = Medir { $piece }
act-pulled = { $piece } ya salió
act-covered = Cubierto: { $pieces }
act-second-place-of = { $piece }: el segundo punto no marca menos de { $temperature }
act-put-back = { $piece } está puesta otra vez
act-reseated = Sonda recolocada
act-read-pit = Escribir la lectura
act-put-on = Poner { $pieces }
act-set-out = Preparar piezas
act-packed = { $pieces } en bolsas
do-answer = ¿Es correcto? { $piece }
do-read = Lee { $piece }
do-mend-fire = Atiende el fuego y luego lee el ahumador
do-hurry = Calienta { $pieces } ya
do-chill = Refrigera { $pieces } ya
do-discard = Tira { $pieces }
do-keep-hot = Mantén { $pieces } caliente
do-serve = Sirve { $pieces }
why-reads = Marcó { $temperature }.
why-peak = Debe estar en su punto más caliente, unos { $temperature }.
why-keep-hot = Con papel aluminio, en un horno a 170 °F (75 °C) o en una hielera tibia. Debe seguir a 140 °F (60 °C) o más: lee una ahora.
act-answer = Responder
act-check = Tapa abierta: empezar a leer
act-chilled = { $pieces } en el refrigerador
act-discarded = { $pieces } a la basura
act-served = { $pieces } en la mesa
offer-pulled = Ya salió
offer-put-on = Poner
offer-chilled = En el refrigerador
offer-discarded = A la basura
offer-of = { $what }: { $piece }
overdue-past = Es probable que se haya pasado desde las { $time }.
overdue-hot = Es probable que pase de { $temperature } desde las { $time }.
live-pull-overdue = Atrasada: había que sacarla a { $temperature } antes de las { $time }
limit-warm-up = Demasiado tiempo entre 40 y 140 °F (4 y 60 °C): el límite es a las { $time }.
limit-out = Demasiado tiempo fuera del refrigerador: el límite es a las { $time }. Ante la duda, tírala.
entry-pull-proving = Sacar de modo que el reposo la compruebe
entry-pull-proving-piece = { $piece }: sacar de modo que el reposo la compruebe
entry-round-began = Tapa abierta para { $pieces }
entry-skipped = { $piece }: no se leyó esta vez
entry-round-ended = Tapa cerrada
entry-discarded = { $piece } a la basura
pad-pull-at = Se saca a { $temperature }.
round-pieces = Piezas de esta ronda
round-skip = Saltar { $piece }
round-lid-closed = Tapa cerrada
proposal-pull-at = Se saca a
proposal-goes-back = Si sale a { $temperature }, unas { $times } de cada 10 veces tiene que volver.
lying = Parrilla, el frente a la izquierda
lying-place = { $piece } en la parrilla
all-pieces = las { $count }

## Reading pad
pad-title-pit = Ahumador
pad-about = Pronóstico { $temperature }, de { $low } a { $high }
pad-pit-about = Fijado a { $temperature }
pad-instrument = Termómetro
instant-read = Lectura rápida
leave-in = Sonda fija
places-two = Menor de dos
pad-typed = Lectura en { $unit }
pad-store = Guardar lectura
pad-delete = Borrar la última cifra
pad-decimal = Coma decimal
pad-keys = Teclado numérico
ask-reading = { $piece }: ¿{ $typed }? Se esperaban unos { $expected }.
ask-keep = { $typed } es correcto
ask-mend = Escribirla otra vez
pad-pull = Retirar { $piece }
pad-put-on = Poner { $piece }
pad-reseat = Sonda fija colocada aquí

## Plan
plan-title = Plan
plan-no-pieces = Prepara primero al menos una pieza.
plan-no-dinner = Pon una hora para la cena y el día se planea hacia atrás desde ella.
plan-dinner-past = La hora de la cena ya pasó. Pon otra.
plan-never-done = El ahumador está demasiado frío para esta temperatura. Súbelo, o saca antes.
plan-legend = Barra: en el ahumador. Caja: ventana para sacar, cuatro de cada cinco veces. Punto: reposada.
plan-dinner-mark = Cena
plan-now-mark = Ahora
plan-eat = Cena
plan-on = Entra { $piece }
plan-pull = Sale { $piece }, probablemente { $window }
plan-rested = { $piece } ha reposado
plan-ready = Lista { $window }. A las { $time }: { $chance }.
plan-style = Cómo cargar
plan-on-together = Todas entran a la vez
plan-off-together = Todas salen a la vez
plan-cost = Espera { $held } en total · tapa abierta { $openings ->
    [one] una vez
   *[other] { $openings } veces
 } · fuego { $fuel } · a tiempo { $chance }
plan-calendar = Guardar el plan para mi calendario
plan-calendar-hint = El calendario del teléfono suena aunque esta página esté cerrada.
pit-low = El ahumador marca { $temperature } y no se recupera.
pit-high = El ahumador marca { $temperature } y no baja.
pit-recovering = El ahumador marca { $temperature } y se recupera.
pit-settling = El ahumador marca { $temperature } y va bajando.
lever-raise = Subir el ahumador a { $temperature }
lever-lower = Bajar el ahumador a { $temperature }
lever-first = Servir primero { $pieces }
lever-dinner = Comer a las { $time }
lever-sooner = Cena { $span } antes; más seca por fuera
lever-later = Cena { $span } después; menos seca por fuera
lever-first-ready = Esas, listas a las { $time }; a tiempo { $chance }
lever-chance = A tiempo { $chance }
lever-choose = Hacerlo
unit-min = min

## Habits
habits-title = Ahumador, parrilla y tiempos
habits-pit = Tipo de ahumador
pit-indirect = Leña o carbón a un lado
pit-pellet = Pellets con ventilador
pit-gas = Gas a un lado
pit-drum = Tambor vertical
habits-times = Cuánto tarda cada cosa
habits-times-hint = En minutos. Alimentar 0 quiere decir que se alimenta solo.
habits-preheat = De encender a caliente (min)
habits-feed = Alimentar el fuego cada (min)
habits-fridge = Fuera de la nevera antes (min)
habits-season = Sazonar (min)
habits-rest = Reposo con papel de aluminio (min)
habits-carve = Cortar y guarniciones (min)
rack-title = Sitios en la parrilla
rack-any = Cabe todo, y se calienta por igual.
rack-count = { $count ->
    [one] Cabe una pieza.
   *[other] Caben { $count } piezas a la vez.
 } Las demás van por tandas. Toca un sitio que sea más caliente o más frío.
rack-fewer = Un sitio menos
rack-more = Un sitio más
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
rest-none = Todavía no hay nada fuera del ahumador.
rest-lead = El reposo no comprueba nada. Comprueba una pieza una lectura de { $rule } o más en la parte más gruesa, la menor de dos puntos.
rest-off = Fuera { $age }
rest-covered = cubierta
rest-uncovered = sin cubrir
rest-cover = Cubrir
rest-read = Medir
rest-second-of = El segundo punto no marca menos de { $temperature }
rest-pack = Servida o en bolsa
rest-put-back = Volver a poner

## Log
log-title = Diario del asado
log-empty = Todavía no ha pasado nada.
log-show-all = Ver las { $count } anotaciones
log-undo = Deshacer: { $what }
log-bring-back = Recuperar: { $what }
log-bring-back-short = Recuperar
log-undone = Deshecho
log-ignored = No cuenta: { $why }
log-set-aside-title = No se pudo leer
log-set-aside-lead = Estas anotaciones guardadas se conservan como se encontraron y no cambian nada.

done-added = { $count ->
    [one] 1 pieza añadida
   *[other] { $count } piezas añadidas
 }
done-more = { $what }, y { $count } más
done-mended = Corregido: { $what }
done-again = Hecho otra vez: { $what }
done-from-phone = De este teléfono: { $what }
log-back = Deshacer: { $what }
log-forward = Rehacer: { $what }
log-mend = Corregir: { $what }
log-mend-short = Corregir
forgotten = Contar lo que se olvidó
forgotten-what = Lo que se olvidó
forgotten-put-on = Al ahumador
forgotten-pulled = Retirada
which-piece = Era
when = Cuándo fue
mend-value = Era ({ $unit })
mend-store = Guardar
mend-leave = Dejarlo como estaba
mend-lost = { $count ->
    [one] 1 anotación más ya no contaría.
   *[other] { $count } anotaciones más ya no contarían.
 }
mend-refused = No puede ser: { $why }.

entry-pit-target = Ahumador fijado a { $temperature }
entry-ambient = Aire donde reposa { $temperature }
entry-dinner = Cena a las { $time }
entry-dinner-none = Cena sin hora fija
entry-pull-target = Retirar a { $temperature }
entry-pull-target-piece = { $piece }: retirar a { $temperature }
entry-proof-rule = Comprobación: { $rule }
entry-set-out = { $piece } preparada: { $facts }
entry-taken-away = { $piece } quitada
entry-put-on = En el ahumador: { $piece }
entry-taken-out = Fuera de la nevera: { $piece }
entry-back-in-fridge = De vuelta en la nevera: { $piece }
entry-pit-read = El ahumador marca { $temperature }
entry-read-instant = { $piece } marca { $temperature }, lectura rápida
entry-read-leave-in = { $piece } marca { $temperature }, sonda fija
entry-read-two = { $reading }, menor de dos
entry-second-place = El segundo punto no marca menos
entry-second-place-piece = { $piece }: el segundo punto no marca menos
entry-vouched = Lectura dada por correcta
entry-seated = Sonda fija colocada en { $piece }
entry-lid = Tapa abierta { $span }
entry-pulled = Fuera: { $piece }
entry-covered = Cubierto: { $piece }
entry-packed = Servido o envasado: { $piece }
entry-out-of-fridge = La carne está fuera de la nevera
entry-season = Sazonado
entry-light-fire = El fuego está encendido
entry-feed-fire = El fuego está alimentado
entry-pit-kind = Tipo de ahumador indicado
entry-rack = Sitios de la parrilla indicados
entry-habits = Tiempos del asado indicados
entry-style = Forma de cargar elegida
entry-tonight = { $piece } es para esta noche
entry-later = { $piece } es para después
entry-tolerances = Tolerancias de los termómetros indicadas
entry-check-risk = Riesgo al medir elegido
entry-thermometer = { $thermometer }, revisión: { $offset }
entry-thermometer-replaced = { $thermometer }: cambiado
entry-prompt-dismissed = Limpio, aviso retirado
entry-prompts-on = Avisos de limpieza puestos
entry-prompts-off = Avisos de limpieza quitados
entry-clock-jumped = El reloj del teléfono ha saltado
entry-clock-unwatched = El teléfono durmió o se cambió su reloj: el tiempo a temperatura empieza de nuevo
entry-undone = Deshecho: { $what }
entry-other = Otra anotación

problem-unknown-piece = esa pieza no está preparada
problem-not-on-yet = la pieza aún no estaba en el ahumador
problem-already-on = la pieza ya estaba en el ahumador
problem-already-off = la pieza ya estaba fuera
problem-already-packed = la pieza ya estaba servida o envasada
problem-unknown-reading = la lectura ya no está
problem-too-late = llegó demasiado después de la lectura
problem-impossible-value = su valor no es posible
problem-in-the-future = todavía no ha pasado
problem-other = ahí no tiene sentido

## Alarms
alarms = Alarmas
alarms-more = { $count ->
    [one] y 1 más
   *[other] y { $count } más
}
alarm-past = Es probable que se haya pasado: { $what }
alarm-other = El asado te llama
alarm-late = Tocaba hace { $span }
alarm-snooze = En 5 min
alarm-done = Oída
alarms-elsewhere = Alarmas de otro asado
alarm-elsewhere = Asado de { $cook }: { $what }

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
curve-pit = { $temperature } leídos a las { $time }, fijado a { $aim }.
curve-pit-none = Aún sin leer, fijado a { $aim }.
section-legend = Corte por la parte más gruesa: la cruz es el punto más frío, la línea es la sonda fija.

## Demo, new version, files
demo-title = Demostración a 60 veces la velocidad
demo-leave = Salir
start-demo = Ver un asado de muestra
version-title = Hay una versión nueva.
version-take = Usarla
version-later = Luego
file-save = Guardar este asado como archivo
file-open = Abrir un asado de un archivo
file-saved = Guardado como { $name }.
file-too-long = El archivo es demasiado largo. Se aceptan hasta 8 MB.
file-unreadable = El teléfono no pudo leer este archivo. Elígelo de nuevo.
file-later = Una versión posterior de esta aplicación escribió el archivo. Actualiza la aplicación para abrirlo.
file-too-many = El archivo tiene demasiadas entradas. Se aceptan hasta 20 000.
file-no-cook = No es un asado guardado por esta aplicación. Se acepta un archivo .json de «Guardar este asado como archivo».
file-refused = El teléfono no aceptó el archivo.

## Storage trouble
trouble-unstored = { $count ->
    [one] 1 anotación todavía no está guardada.
   *[other] { $count } anotaciones todavía no están guardadas.
 }
trouble-slow = El teléfono tarda en guardar.
trouble-kept = El asado sigue, la aplicación lo sigue intentando y hay una copia en el almacén pequeño del navegador.
trouble-not-kept = El asado sigue y la aplicación lo sigue intentando, pero guarda el asado como archivo antes de cerrar esta página, o se pierden.
trouble-taken-along = Se conservan al volver a cargar esta página.
trouble-denied = Este navegador no guarda nada de esta página (ventana privada, o almacenamiento apagado).
trouble-full = El teléfono no tiene más espacio.
trouble-busy = El almacenamiento no responde. Cierra otras ventanas de Pull Order.
trouble-lost = El navegador perdió su almacenamiento y lo recupera al volver a cargar esta página.
trouble-replaced = Hay una versión más nueva de Pull Order abierta en otra ventana. Cierra esta.
trouble-taken = Otra ventana guardó otra cosa en este lugar.
trouble-failed = El almacenamiento falló: { $why }.
trouble-reload = Volver a cargar

## More, settings
more-title = Más
settings-title = Ajustes
settings-temperature = Temperatura
settings-weight = Peso
settings-length = Grosor
settings-look = Aspecto
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
more-set-out = Preparar y planear
more-cautions = Precauciones
more-settings = Ajustes
more-end = Dejar este asado
more-new = Nuevo asado

## Cautions
cautions-title = Precauciones
caution-readings-title = Solo las lecturas comprueban
caution-readings = Un pronóstico te dice cuándo mirar. Nunca demuestra que una pieza es segura. Solo lo hace tu termómetro.
caution-instant-title = La temperatura que comprueba
caution-instant = El ave es segura al momento a { $rule } en la parte más gruesa.
caution-every-title = Cada pieza, dos puntos
caution-every = Mide cada pieza por sí misma con el termómetro de lectura rápida, al menos en dos puntos de la parte más gruesa. Cuenta el menor. Una sonda fija te dice cuándo mirar; no comprueba.
caution-clean-title = Manos limpias, termómetro limpio
caution-clean = Lávate las manos y lava la tabla y el termómetro entre lo crudo y lo cocinado. Limpia la sonda después de medir una pieza poco hecha. Usa un plato limpio al retirar.
caution-codes-title = Las normas de tu lugar van primero
caution-codes = Si una norma sanitaria de tu lugar dice otra cosa, síguela a ella y no a esta aplicación.
caution-licence-title = Para vender o para un banquete
caution-licence = Cocinar para la venta o para invitados que pagan exige la práctica que pide tu licencia. Esta aplicación no la sustituye.
caution-thermometer-title = Fíate del termómetro solo hasta cierto punto
caution-thermometer = Sigue las instrucciones de su fabricante. Revísalo en agua con hielo y en agua hirviendo antes de fiarte de él.
caution-care-title = Más cuidado con algunas personas
caution-care = Los niños pequeños, las embarazadas, las personas mayores y las de defensas bajas enferman antes. Si dudas, cocina más.
caution-knows-title = Lo que esta aplicación sabe
caution-knows = Solo sabe lo que escribes. El pronóstico sale de un modelo de calor con sus propios errores; el viento, una forma rara o un peso equivocado lo desvían.
caution-cannot-title = Lo que esta aplicación no puede saber
caution-cannot = No puede saber si la sonda estaba en el punto más frío, en la pieza correcta o bien leída, cómo se guardó antes la carne, ni qué pasó en su superficie o después del asado. Tampoco distingue un reloj adelantado de un teléfono dormido: tras cualquiera de los dos, el tiempo a temperatura empieza de nuevo.

## Safety: rule, thermometers, clocks, proof
more-safety = Seguridad: regla y termómetros
more-thermometer = Revisar un termómetro
safety-title = Seguridad
safety-lead = Las lecturas comprueban una pieza, y nada más lo hace. Elige para este asado qué debe mostrar una lectura.
safety-rule = Qué comprueba una pieza
safety-rule-own = Una cifra mayor
safety-rule-held = Tiempo a temperatura
safety-rule-now = En vigor: { $rule }.
safety-source = Fuente: { $source }.
rule-instant = { $temperature } al momento
rule-held = tiempo a temperatura, { $fat } % de grasa
rule-instant-text = Una lectura de { $temperature } o más en la parte más gruesa, la menor de dos puntos. La regla habitual.
rule-own-text = Tu propia cifra en lugar de { $temperature }, nunca menor.
rule-own-field = Tu cifra ({ $unit })
rule-own-use = Comprobar con esta cifra
rule-held-text = Una temperatura menor mantenida bastante tiempo. El tiempo cuenta solo entre dos lecturas rápidas de la misma pieza, cada una la menor de dos puntos, con no más de { $gap } entre ellas, y a la menor de las dos. Mantén la aplicación a la vista: si el teléfono se duerme, el tiempo empieza de nuevo. { $instant } comprueba también aquí al momento.
rule-held-caution = La agencia que publica esta tabla no da por validado para la superficie el calor seco de barbacoa sin control de humedad: en una superficie seca, la Salmonella aguanta más calor del que la tabla supone. Si dudas, usa { $instant }.
rule-held-fat = Grasa en la carne
rule-held-fat-5 = 5 %
rule-held-fat-12 = 12 %, o no se sabe
rule-held-rows = Cuánto tiempo a qué temperatura
rule-held-row = { $temperature }: { $dwell }
rule-held-use = Lo sé; comprobar con la tabla
safety-thermometers = Termómetros
safety-tolerance-hint = Cuánto puede errar cada uno, hacia arriba o hacia abajo: la cifra de su fabricante.
safety-tolerance-instant = Lectura rápida ({ $unit })
safety-tolerance-leave-in = Sonda fija ({ $unit })
safety-tolerance-pit = Ahumador ({ $unit })
safety-checks = Mediciones y avisos
safety-risk = Probabilidad de haberse pasado al medir ({ $unit })
safety-risk-hint = Menor significa medir antes y más veces.
safety-prompts = Avisos de limpieza
unit-percent = %
unit-lb = lb
unit-ft = ft
unit-m = m

check-title = Revisar un termómetro
check-lead = Sigue primero las instrucciones de su fabricante. El hielo picado con agua entre medias, removido, está a { $ice } en cualquier lugar. El agua en plena ebullición depende de la altitud.
check-which = Termómetro que se revisa
check-ice = Marca en agua con hielo ({ $unit })
check-boiling = Marca en agua hirviendo ({ $unit })
check-altitude = Altitud ({ $unit })
check-boils-at = Allí el agua hierve a { $temperature }.
check-use = Usar esto desde ahora
check-both = Cuenta la menor de las dos revisiones.
check-now = { $thermometer } ahora: { $offset }
check-too-far = Se desvía más de { $most }. Vuelve a revisarlo con la punta en medio del agua y cambia después la pila o el termómetro.
check-barred = Este termómetro se desvía más de lo que se puede corregir. Nada de lo que midió comprueba una pieza hasta que lo cambies o le cambies la pila.
check-replaced = Tiene pila nueva, o es otro
check-over-allowed = Un termómetro de cocina puede desviarse { $allowed } como mucho. Mejor una pila nueva u otro termómetro que una corrección.
offset-true = marca bien
offset-high = marca { $by } de más; cada lectura cuenta { $by } menos
offset-low = marca { $by } de menos; el pronóstico cuenta { $by } más, una comprobación no
reading-counted = { $shown }, cuenta como { $counted }

clocks = Relojes que importan
clock-of = { $pieces }: { $what }
clock-left = quedan { $left }
clock-over = { $over } de más
clock-raw = al ahumador o de vuelta a la nevera antes de las { $time }
clock-raw-why = Cruda y fuera de la nevera, contado desde las { $since }. Dos horas como mucho; una con más de 90 °F (32 °C).
clock-raw-over = Estuvo cruda fuera demasiado tiempo. Tírala.
clock-warm-up = pasar de { $hot } antes de las { $time }
clock-warm-up-why = No consta por encima de { $hot } desde las { $since }. Un ahumador lento o que se apaga deja la carne demasiado tiempo entre { $cold } y { $hot }.
clock-warm-up-over = Han pasado cuatro horas entre { $cold } y { $hot }. El calor no destruye todos los venenos que dejan las bacterias: tírala.
clock-fridge = en la nevera antes de las { $time }
clock-fridge-why = Fuera del calor y no consta por encima de { $hot } desde las { $since }.
clock-fridge-over = Lleva fuera demasiado tiempo para comerla o guardarla. Tírala.
clock-cool-70 = a { $to } antes de las { $time }
clock-cool-70-why = Enfriado, primer paso: desde { $from }, contado desde las { $since }.
clock-cool-70-over = El primer paso ha tardado demasiado. Recaliéntala enseguida a { $instant } o tírala.
clock-cool-41 = a { $to } antes de las { $time }
clock-cool-41-why = Enfriado, los dos pasos. Qué ayuda: dividirla, bolsas planas, baño de hielo.
clock-cool-41-over = El enfriado ha tardado demasiado. Tírala.
clock-expected = Pronóstico: a las { $time }.
clock-expected-below = Pronóstico: por debajo de { $hot } desde las { $time }.
clock-not-expected = Pronóstico: no para entonces.
over-raw = Estuvo cruda y fuera de la nevera más de lo permitido, desde las { $time }. Tírala: el calor no destruye todos los venenos que dejan las bacterias.
over-warm-up = Estuvo entre 41 °F y 140 °F (5 °C y 60 °C) más de cuatro horas en total, desde las { $time }. Ya nada la comprueba. Tírala.
over-fridge = Estuvo fuera de la nevera más de lo permitido, desde las { $time }. Tírala.
over-cooling = Se enfrió demasiado despacio: el límite eran las { $time }. Tírala.
over-processor = El FSIS deja a un procesador que lo registra tardar seis horas de 50 °F a 130 °F (10 °C a 54 °C). Esta aplicación no puede demostrarlo.

unproved = En reposo, aún sin comprobar.
unproved-peak = Aún sin comprobar. Máximo de unos { $temperature } a las { $time }
short-not-read = Todavía no tiene lectura.
short-before = La última lectura es de antes de volver a ponerla.
short-packed = La última lectura se escribió después de envasarla.
short-future = La hora de la última lectura es posterior a cuando se escribió: un reloj va mal.
short-late = La última lectura se escribió demasiado después de tomarla.
short-copied = La última lectura se escribió en el mismo instante que la de otra pieza.
short-bad-thermometer = Se comprobó que el termómetro se desvía más de lo que se puede corregir.
short-leave-in = Una sonda fija muestra un solo punto. Usa el de lectura rápida.
short-cool = La última lectura, { $reading }, está por debajo de { $rule }.
short-fast = La última lectura es más alta de lo que la pieza puede estar ya. Mídela otra vez.
short-doubted = La última lectura no encaja con las demás, y no has dicho que es correcta.
short-contradicted = Una lectura posterior de { $reading } muestra un punto más frío.
short-one-place = La última lectura fue en un solo punto.
short-other = La última lectura no la comprueba.
proof-read-at = Mídela en dos puntos a las { $time }, cuando estará más caliente: unos { $temperature } según el pronóstico.
proof-peak-gone = Estuvo más caliente hacia las { $time }. Mídela ahora; si ninguna lectura la comprueba, vuelve al ahumador.
proof-peak-low = Según el pronóstico este reposo no llega a { $rule }.
proof-hold = Mantenida a { $temperature } o más desde las { $since }. Una lectura a las { $complete } que no sea menor la comprueba; mide antes de las { $by } o el tiempo empieza de nuevo.
proof-hold-keep = Mantenida a { $temperature } o más desde las { $since }. Mide antes de las { $by } o el tiempo empieza de nuevo; no queda comprobada antes de las { $complete }.
back-on = Otra vez al ahumador: unos { $middle }, según el pronóstico de { $low } a { $high }, hasta que el centro esté a { $rule }. Luego mídela otra vez.
back-on-unknown = Otra vez al ahumador hasta que una lectura de { $rule } la compruebe.
rest-lead-held = Según la tabla que elegiste, también la comprueba una temperatura menor mantenida bastante tiempo entre dos lecturas.

proposal-lowest = { $temperature } es lo mínimo con que el reposo la comprueba 19 de 20 veces.
proposal-take = Volver a { $temperature }
lethality = Pronóstico, solo informativo; no comprueba nada. Hasta ahora unas { $cuts } de las { $asked } reducciones a la décima parte de Salmonella que se piden al ave, del lado desfavorable ({ $source }).


## Alarms on this phone
more-alarms = Alarmas en este teléfono
on = Sí
off = No
alarms-title = Alarmas en este teléfono
alarms-lead = Con esta página delante y la pantalla encendida, cada alarma llega a su hora. Con otra aplicación delante, o la pantalla apagada, el teléfono puede parar la página en un minuto o antes. Lo que te perdiste llega en cuanto vuelves a mirar, y dice cuánto se retrasó.
alarms-backup = Si te alejas del fuego, pon también el temporizador del teléfono.
alarms-notify-not-offered = Este navegador no muestra notificaciones de esta página. En un iPhone hace falta la aplicación en la pantalla de inicio.
alarms-notify-not-asked = Una notificación muestra una alarma sobre otras aplicaciones, mientras el teléfono deje correr esta página.
alarms-notify-buttons = Una notificación muestra la alarma sobre otras aplicaciones, con posponer y hecho, mientras el teléfono deje correr esta página.
alarms-notify-ask = Permitir notificaciones
alarms-notify-granted = Las notificaciones están permitidas.
alarms-notify-refused = Las notificaciones están rechazadas. Se puede cambiar en los ajustes del teléfono para esta página.
alarms-awake = Este teléfono puede dejar la pantalla encendida mientras haya una pieza en el fuego. Con poca batería puede que no.
alarms-not-awake = Este navegador no puede dejar la pantalla encendida. Alarga el tiempo de pantalla en los ajustes del teléfono.
alarms-install = En la pantalla de inicio la aplicación se guarda mejor y puede hacer más.
alarms-try = Probar mis alarmas
alarms-trying = Probando…
alarms-trial-title = Alarma de prueba
alarms-trial-snooze = Posponer
alarms-trial-done = Hecho
alarms-trial-body = Así se ve una alarma.
alarms-sound = Sonido
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
tried-not-kept = El navegador no prometió conservar lo guardado. Guarda el asado como archivo para estar seguro.
tried-installed = La aplicación corre desde la pantalla de inicio.
tried-not-installed = La aplicación corre en una pestaña del navegador.

## Prompts
prompts = Manos y útiles limpios
prompt-probe = Limpia la sonda antes de la siguiente pieza.
prompt-plate = Toma un plato limpio para lo que sale.
prompt-done = Hecho

## Kitchen: before the cook and after the rest
kitchen-entry = Cocina: adobo, raciones, bolsas
kitchen-due = { $count ->
    [one] Hay 1 bolsa en la nevera para comer ya.
   *[other] Hay { $count } bolsas en la nevera para comer ya.
 }
kitchen-past = { $count ->
    [one] 1 bolsa de la nevera ha pasado su día: tírala.
   *[other] { $count } bolsas de la nevera han pasado su día: tíralas.
 }
kitchen-title = Cocina
kitchen-tabs = Partes de la cocina
kitchen-tab-bags = Bolsas
kitchen-tab-portions = Raciones
kitchen-tab-rub = Adobo
kitchen-empty = Aún no hay bolsas. Después del reposo, reparte las piezas y envásalas aquí.
kitchen-may-be-deleted = Un iPhone puede borrar lo que guarda una página web tras una semana sin visitarla, y otros teléfonos pueden hacerlo cuando les falta espacio. Pon la aplicación en la pantalla de inicio y guarda los recordatorios para el calendario.
kitchen-weight = { $weight } en bolsas. La de arriba se come primero.
kitchen-to-portions = Repartir y envasar
kitchen-to-chill = Cuánto tardan en enfriarse
kitchen-to-labels = Imprimir etiquetas
kitchen-reminders = Avisos para el calendario
kitchen-no-reminders = No hay nada que avisar.
kitchen-gone = Usadas y tiradas
grams = { $count } g
hours = { $count } h
days = { $count } días
teaspoons = { $count } cdta.
tablespoons = { $count } cda.
form-whole = entera
form-sliced = en lonchas
form-chunked = en trozos
form-shredded = deshebrada
place-fridge = Nevera
place-freezer = Congelador
goes-tonight = Esta noche
packing-plain = Bolsa normal
packing-covered = En caldo o salsa
packing-vacuum = Al vacío
cooling-fridge = En la nevera
cooling-on-ice = Sobre hielo
cooling-ice-bath = En agua con hielo

bag-number = Bolsa { $number }
bag-name = { $name }, bolsa { $number }
bag-facts = { $weight }, { $form }. { $packing }. { $place }. Cocinado { $cooked }.
bag-eat-by = comer antes del { $day }
bag-best-by = mejor antes del { $day }
bag-past = Pasada de fecha: tírala
bag-does-not-keep = no la comas: tírala
bag-unproved = Ya nada comprueba su carne: una lectura del asado se deshizo o se corrigió después. No la comas hasta que el registro esté bien.
bag-throw-which = Tirar la bolsa { $number }
bag-due = Cómela ya: sus días casi se acaban.
bag-used = Usada
bag-used-which = Usada: bolsa { $number }
bag-throw-away = Tirar
bag-to-fridge = Pasar a la nevera
bag-to-freezer = Pasar al congelador
bag-reheat = Recalentar esta bolsa
bag-not-packed = Al final no se guardó
bag-gone = Esta bolsa se usó o se tiró.
bag-unknown = Este teléfono no conoce esa bolsa.
done-packed = { $count ->
    [one] 1 bolsa envasada
   *[other] { $count } bolsas envasadas
 }
done-moved = Bolsa { $number } movida: { $place }
done-used = Bolsa { $number } usada
done-thrown = Bolsa { $number } tirada
done-weighed = Pesada guardada
done-rub = Adobo guardado
remind-use = Usar a más tardar mañana: { $bag }
remind-throw = Tirar: { $bag }
remind-freezer = Usar pronto, del congelador: { $bag }

label-title = Etiqueta
label-what = Pechuga de pollo, { $form }
label-cooked = Cocinada { $cooked }
label-bath = Baño { $bath }, { $minutes } min
label-bath-flat = Baño { $bath }, { $minutes } min, acostada
label-code = Abrir la pantalla de recalentar de esta etiqueta
label-hint = Escribe estas líneas en la bolsa, o imprímelas. El código abre cómo recalentar esta bolsa, sin señal. El tiempo de baño vale para ahora: una bolsa congelada tarda más que una fría.
label-unread = Etiqueta sin leer
label-later = Esta etiqueta es de una versión posterior de la aplicación. Actualízala para leerla.
label-damaged = El código de esta etiqueta está dañado. Elige la bolsa en la lista.
labels-title = Imprimir etiquetas
labels-which = Qué bolsas
labels-today = Envasadas hoy
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
labels-print-hint = Imprime en papel { $paper } a tamaño real (100 %), sin márgenes. Prueba antes en papel normal.
paper-letter = carta
paper-a4 = A4
labels-no-print = Este navegador no puede imprimir. Escribe la etiqueta a mano.

portions-title = Raciones
portions-none = Aún no hay piezas comprobadas. Llegan aquí cuando una lectura las comprueba; también se pueden escribir piezas ya cocinadas.
portions-estimate = { $count ->
    [one] 1 pieza, unos { $weight } cocinada, con { $spread } de más o de menos.
   *[other] { $count } piezas, unos { $weight } cocinadas, con { $spread } de más o de menos.
 }
portions-weighed = { $count ->
    [one] 1 pieza, { $weight } cocinada.
   *[other] { $count } piezas, { $weight } cocinadas.
 }
portions-to-come = { $count ->
    [one] 1 pieza aún sin comprobar: unos { $weight } ya hecha, más o menos { $spread }.
   *[other] { $count } piezas aún sin comprobar: unos { $weight } ya hechas, más o menos { $spread }.
 }
portions-tonight-left = Esta noche se lleva { $tonight }; quedan unos { $left }.
portions-tonight-short = Esta noche pide { $tonight }: faltan unos { $short }.
portions-weighings = { $count ->
    [one] La estimación cuenta 1 pesada tuya.
   *[other] La estimación cuenta { $count } pesadas tuyas.
 }
portions-source = Lo que tiene una ración: USDA Standard Reference 28, pechuga cruda, por el peso en crudo; se supone que solo se pierde agua. La sal cuenta el adobo elegido en Adobo.
portions-weigh = Todas juntas en la balanza ({ $unit })
portions-weigh-hint = Déjalo vacío para seguir la estimación. Cada pesada mejora las próximas.
portions-type-pieces = Escribir piezas cocinadas
portions-how-many = Cuántas
portions-cooked-each = Peso cocinado de cada una ({ $unit })
portions-add-cooked = Añadir piezas cocinadas
portions-cooked-hours = Horas desde que salió del calor
portions-cooked-hours-hint = Tiene que haber llegado a la nevera en dos horas y haber quedado allí. La carne que no, no se guarda: tírala.
portions-clear-typed = Quitar las piezas escritas
portions-typed-piece = Pieza escrita { $number }
portions-tap-hint = Toca una pieza para pasarla al uso siguiente. Las demás se reparten de nuevo, con lo mínimo de sobra.
portions-move = pasar a { $to }
portions-dinner-name = Cena
portions-rest-name = Piezas enteras
portions-new-name = Almuerzos
portions-change-which = Cambiar { $name }
portions-done = Listo
portions-done-which = Listo: { $name }
portions-add = Añadir un uso
portions-remove = Quitar este uso
portions-choose-again = Que reparta otra vez la aplicación
portions-fixed = lo elegiste
portions-left = Sin usar
portions-name = Nombre
portions-wanted = Cuánto
wanted-servings = Raciones
wanted-pieces = Piezas
wanted-rest = Lo que queda
portions-each = A cada uno ({ $unit })
portions-wish = { $goes }: { $amount }, { $form }
portions-rest-of = lo que quede
portions-form = Corte
portions-goes = Adónde va
portions-bags = Bolsas (vacío: una por cada)
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
portions-content = Una ración, más o menos: { $energy } kcal, { $protein } g de proteína, { $fat } g de grasa, { $salt } g de sal
portions-no-lots = No hay adónde llevar las piezas. Añade un uso.
portions-too-many = Es demasiado a la vez. Se aceptan hasta 40 piezas y 12 usos.
portions-bad-weight = Cada pieza y cada ración debe pesar más que nada.
pack-title = Bolsas por envasar
pack-all = { $count ->
    [one] Envasar 1 bolsa
   *[other] Envasar { $count } bolsas
 }
pack-done = Estas bolsas ya están guardadas.
pack-too-late = Demasiado tiempo fuera del frío: tírala
pack-unproved = { $pieces }: dejó de estar comprobada después de servirla o envasarla, o nunca lo estuvo. No va a ninguna bolsa: no la comas si no se corrige el registro.
pack-again = Envasarlas una vez más
pack-demo = La demostración no envasa bolsas.

chill-title = Enfriar
chill-none = No hay bolsas que enfriar. Reparte antes las piezas.
chill-core = Centro al embolsar ({ $unit })
chill-core-hint = Mide la pieza más gruesa. Los tiempos son de un modelo, no una lectura.
chill-batch = { $what }: { $count } × { $weight }
chill-times = { $middle } en { $first }, { $cold } en { $second }.
chill-keeps = Cumple el límite de dos pasos.
chill-order-title = Envasa en este orden
chill-where = Dónde se enfría
chill-minutes = Minutos para envasar una bolsa
chill-in-time = En frío antes de las { $by }. En este orden queda guardada a las { $done }.
chill-late = Debía estar en frío a las { $by }: { $span } tarde.
chill-helps-title = Lo que ayuda
chill-helps-split = Corta las piezas gruesas, o pon menos en cada bolsa.
chill-helps-flat = Aplana las bolsas, a 25 mm o menos, y ponlas una al lado de otra.
chill-helps-ice = Las bolsas cerradas en agua con hielo, removida a ratos, se enfrían varias veces más rápido que en la nevera.

reheat-which = Recalentar: { $bag }
reheat-facts = { $weight }, { $form }, cocinado { $cooked }.
reheat-not-here = Esta bolsa no está entre las de este teléfono. Todo lo de abajo sale de su etiqueta.
reheat-time = En un baño a { $bath }
reheat-likely = Probable: { $likely } hasta { $core } en el centro; el tiempo largo basta aun para una bolsa un octavo más gruesa. Si entra ahora, lista a las { $ready }. Mide el centro.
reheat-from = Viene
reheat-chilled = Fría
reheat-frozen = Congelada
reheat-bath = Baño ({ $unit })
reheat-core = Centro deseado ({ $unit })
reheat-thickness = Grosor de la bolsa ({ $unit })
reheat-thickness-hint = De la bolsa plana, o de una pieza entera en lo más grueso. Es lo que más decide.
reheat-bath-too-cool = El baño debe estar al menos 3 °F (2 °C) más caliente que el centro deseado.
reheat-bath-too-hot = El agua hierve a 212 °F (100 °C). Se acepta un baño hasta ahí.
reheat-core-bad = Se acepta un centro de 130 °F a 185 °F (54 °C a 85 °C). Más frío no se debe mantener mucho.
reheat-too-long = Tardaría más de un día. Usa un baño más caliente o una bolsa más fina.
reheat-bag-bad = Se acepta una bolsa de 10 g a 5 kg y de 5 a 100 mm (0.2 a 4 in) de grosor.
reheat-thaw-title = Descongelar antes
reheat-thaw = En la nevera unas { $fridge }, sobre un plato. En agua fría unas { $water }, cambiada cada media hora, y después al calor enseguida.
reheat-other-title = Sartén u horno
reheat-pan-stir = Sartén: fuego bajo, tapada, un chorrito de caldo; remueve hasta leer { $advised } en el centro.
reheat-pan-turn = Sartén: fuego bajo, tapada, un chorrito de caldo; dale vueltas hasta leer { $advised } en el centro.
reheat-oven = Horno: { $oven } o más, tapado, un chorrito de caldo, hasta leer { $advised } en el centro.

caution-leftovers = El USDA aconseja { $advised } para las sobras. El FDA Food Code deja recalentar a cualquier temperatura lo que se cocinó y enfrió bien, si se sirve al momento.
caution-no-hold = No lo mantengas mucho por debajo de 130 °F (54 °C). Sirve al momento, o mantenlo a 135 °F (57 °C) o más.
caution-slow-to-warm = Su centro está más de cuatro horas por debajo de 130 °F (54 °C). Descongélala antes, o usa una bolsa más fina.
caution-vacuum = Al vacío: sin aire, Clostridium botulinum puede crecer por encima de 38 °F (3 °C), sin oler. Guárdala a 38 °F o menos, o congelada, y abre la bolsa antes de que se descongele.
caution-two-hours = Al frío dentro de dos horas desde el fuego; una hora si hace más de 90 °F (32 °C).
caution-first-step = Tarda más de dos horas de 135 °F a 70 °F (57 °C a 21 °C): córtala, extiéndela más fina, o usa hielo.
caution-second-step = Tarda más de seis horas de 135 °F a 41 °F (57 °C a 5 °C) en total: usa hielo o una bolsa más fina.
caution-past-eat-by = Pasó su fecha. Tírala, huela como huela.
caution-too-late = Llegó al frío demasiado tarde. Tírala, huela como huela.
caution-cooling-over = Ya se enfrió demasiado despacio: dos horas hasta 70 °F (21 °C), seis hasta 41 °F (5 °C) en total. Tírala.
caution-middle-not-seen = Lleva más de dos horas por debajo de 135 °F (57 °C). Si nadie leyó 70 °F (21 °C) en ese tiempo, tírala.
caution-slow-to-reheat = Tarda más de dos horas en calentarse. Descongélala antes, o usa una bolsa más fina o agua más caliente.
caution-slow-to-thaw = Es demasiado tiempo en agua más caliente que una nevera. Descongélala en la nevera.
caution-days-unknown = Esta etiqueta no dice cuántos días estuvo en la nevera antes de congelarse. Cuatro días en total, antes y después, es lo máximo.
caution-local-code = Las normas sanitarias de tu lugar van antes que todo lo de aquí.

rub-title = Adobo
rub-own-name = Mi adobo
rub-another = Otro adobo
rub-new-name = Su nombre
rub-new = Adobo nuevo
rub-measure = Una parte es
rub-by-volume = Una cuchara o taza
rub-by-weight = Un peso
rub-parts = Partes
rub-parts-of = Partes: { $parts }
rub-spice = Qué
rub-ingredient = Tu nombre para ello
rub-blend-salt = Sal que lleva (% en peso)
rub-blend-hint = 2,5 g de sodio son 6,4 g de sal.
rub-add = Añadir al adobo
rub-take-out = Quitar
rub-take-out-which = Quitar { $name }
rub-empty = Aún no lleva nada. Añade cada ingrediente con sus partes.
rub-salt-share = { $share } % de sal en peso
rub-heavy-fact = Los adobos con menos de un 20 % de sal admiten una capa gruesa (práctica común, sin fuente).
rub-mix-title = Para mezclar
rub-for-cook = { $count ->
    [one] Para el asado abierto: 1 pieza, { $weight } en crudo
   *[other] Para el asado abierto: { $count } piezas, { $weight } en crudo
 }
rub-no-pieces = No hay piezas que adobar.
rub-bad = Las partes deben ser 0 o más, y la sal de una mezcla de 0 a 100 %.
rub-coat = Capa
coat-light = Ligera
coat-medium = Media
coat-heavy = Gruesa
rub-limit = Sal como mucho (g por 100 g de carne)
rub-total = Adobo para todas: { $weight } g
rub-level = Sal: { $level } g por 100 g de carne; { $saltiest } g en la pieza más pequeña.
rub-oil = Aceite para que se pegue: { $oil }
rub-over = La pieza más pequeña lleva { $saltiest } g de sal por 100 g; tu límite es { $limit } g. Pon una capa más ligera o menos sal.
brine-title = Salar antes
brine-none = Sin salmuera
brine-dry = Salmuera seca
brine-wet = Salmuera líquida
brine-level = Sal deseada (g por 100 g)
brine-water = Agua ({ $unit })
brine-salt = Pesa { $grams } g de sal
brine-between = de { $quick } a { $slow }
brine-outer = Mitad de fuera sazonada: { $span }
brine-middle = Sazonada hasta el centro: { $span }
brine-guide = Una guía según la pieza más gruesa: la sal avanza a velocidades muy distintas. Guárdala en la nevera, y no pongas sal en el adobo.
brine-outlasts = El centro puede tardar más de lo que dura el pollo crudo en la nevera (dos días). Cocínalo antes.
spice-table-salt = Sal fina
spice-coarse-salt = Sal gruesa
spice-flake-salt = Sal en escamas
spice-sugar = Azúcar
spice-brown-sugar = Azúcar moreno
spice-paprika = Pimentón
spice-black-pepper = Pimienta negra
spice-garlic = Ajo en polvo
spice-onion = Cebolla en polvo
spice-chilli = Chile en polvo
spice-cumin = Comino
spice-cayenne = Cayena
spice-mustard = Mostaza en polvo
spice-other = Otra especia
spice-blend = Una mezcla con sal
