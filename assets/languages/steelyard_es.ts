<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AgreementPage</name>
    <message>
        <source>Guardian&apos;s agreement</source>
        <translation>Permiso de los padres</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>AGREED</source>
        <translation>PERMISO DADO</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>Who agreed</source>
        <translation>Quién dio permiso</translation>
    </message>
    <message>
        <source>a parent or guardian, by name</source>
        <translation>madre, padre o tutor, con su nombre</translation>
    </message>
    <message>
        <source>Say what is kept: name, squad, year of birth, body mass, height, loads and notes, on this device, sealed. Say who sees it, and that they can have it taken out again.</source>
        <translation>Di qué se guarda: nombre, plantel, año de nacimiento, masa corporal, estatura, cargas y notas, en este dispositivo, todo sellado. Di quién lo ve, y que pueden pedir que se quite.</translation>
    </message>
    <message>
        <source>Local law and your federation or school decide what you need, and may ask for more, in writing or from the athlete as well.</source>
        <translation>La ley local y tu federación o escuela deciden qué necesitas, y pueden pedir más, por escrito o también de cada atleta.</translation>
    </message>
</context>
<context>
    <name>AidEditor</name>
    <message>
        <source>bar and collars with it; 0 where it goes slack</source>
        <translation>con barra y cierres; 0 donde se afloja</translation>
    </message>
    <message>
        <source>higher than where it touches the chest</source>
        <translation>más alto que donde toca el pecho</translation>
    </message>
    <message>
        <source>Helps %1</source>
        <translation>Ayuda %1</translation>
    </message>
    <message>
        <source>Help by height: not known yet</source>
        <translation>Ayuda por altura: aún no se sabe</translation>
    </message>
    <message>
        <source>Reading %1 does not go with the others: higher up it helps less</source>
        <translation>La lectura %1 no cuadra con las demás: más arriba ayuda menos</translation>
    </message>
    <message>
        <source>%1, left out</source>
        <translation>%1, omitida</translation>
    </message>
    <message>
        <source>%1, odd</source>
        <translation>%1, no cuadra</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>medida hasta %1</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>no cuadra</translation>
    </message>
    <message>
        <source>Bench aid</source>
        <translation>Ayuda de banca</translation>
    </message>
</context>
<context>
    <name>AidGuide</name>
    <message>
        <source>Measure a bench aid</source>
        <translation>Medir una ayuda de banca</translation>
    </message>
    <message>
        <source>What rests on it?</source>
        <translation>¿Qué se apoya en ella?</translation>
    </message>
    <message>
        <source>How high over the chest?</source>
        <translation>¿A qué altura sobre el pecho?</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>lectura %1</translation>
    </message>
    <message>
        <source>Bar, collars and plates: all that the aid carries by itself.</source>
        <translation>Barra, cierres y discos: todo lo que la ayuda soporta por sí sola.</translation>
    </message>
    <message>
        <source>From where the bar touches the chest up to where it rests. Her hands stay round the bar.</source>
        <translation>Desde donde la barra toca el pecho hasta donde reposa. Sus manos siguen rodeando la barra.</translation>
    </message>
    <message>
        <source>First where it begins to help</source>
        <translation>Primero, donde empieza a ayudar</translation>
    </message>
    <message>
        <source>Key 0: let the bar down by hand until the aid just comes taut, and read the height.</source>
        <translation>Teclea 0: baja la barra a mano hasta que la ayuda empiece a tensarse, y lee la altura.</translation>
    </message>
    <message>
        <source>Go down to the chest</source>
        <translation>Baja hasta el pecho</translation>
    </message>
    <message>
        <source>Put on what just brings the bar to touch it: height 0. There it helps most.</source>
        <translation>Carga lo justo para que la barra lo toque: altura 0. Ahí es donde más ayuda.</translation>
    </message>
    <message>
        <source>About %1, to rest at %2</source>
        <translation>Unos %1: reposa a %2</translation>
    </message>
    <message>
        <source>Go for about %1 above the chest</source>
        <translation>Busca alrededor de %1 sobre el pecho</translation>
    </message>
    <message>
        <source>There the curve is least sure.</source>
        <translation>Ahí es donde menos fiable es la curva.</translation>
    </message>
    <message>
        <source>Enough readings.</source>
        <translation>Lecturas suficientes.</translation>
    </message>
    <message>
        <source>Where it goes slack was not read: above the highest reading its help is not known.</source>
        <translation>No se leyó dónde se afloja: por encima de la lectura más alta no se sabe cuánto ayuda.</translation>
    </message>
    <message>
        <source>It was not read at the chest: below the lowest reading its help is not known.</source>
        <translation>No se leyó en el pecho: por debajo de la lectura más baja no se sabe cuánto ayuda.</translation>
    </message>
    <message>
        <source>One more at about %1 above the chest would make it surer.</source>
        <translation>Una más, alrededor de %1 sobre el pecho, la haría más fiable.</translation>
    </message>
</context>
<context>
    <name>AidMeasured</name>
    <message>
        <source>strap</source>
        <translation>correa</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>pecho</translation>
    </message>
</context>
<context>
    <name>AidPage</name>
    <message>
        <source>Measure a bench aid</source>
        <translation>Medir una ayuda de banca</translation>
    </message>
    <message>
        <source>rest plates on it, read the height</source>
        <translation>apoya discos encima, lee la altura</translation>
    </message>
    <message>
        <source>Reading %1, mass: %2</source>
        <translation>Lectura %1, masa: %2</translation>
    </message>
    <message>
        <source>Reading %1, height: %2</source>
        <translation>Lectura %1, altura: %2</translation>
    </message>
</context>
<context>
    <name>AidStepsPage</name>
    <message>
        <source>Looked over: begin</source>
        <translation>Revisada: empezar</translation>
    </message>
    <message>
        <source>She lies under a bar that only rubber carries</source>
        <translation>Se acuesta bajo una barra que solo la goma soporta</translation>
    </message>
    <message>
        <source>Look it over, stretched by hand: a cut, a thin place or a loose seam, and it is not measured but thrown away.</source>
        <translation>Revísala, estirada a mano: con un corte, una zona fina o una costura suelta no se mide, se desecha.</translation>
    </message>
    <message>
        <source>Safeties in, just under the lowest height you mean to read, tried with the empty bar. A spotter at each end.</source>
        <translation>Barras de seguridad puestas, justo por debajo de la altura más baja que vas a leer y probadas con la barra vacía. Un ayudante en cada extremo.</translation>
    </message>
    <message>
        <source>Her hands stay closed round the bar. Two helpers let it down and lift it off at once after each reading.</source>
        <translation>Sus manos siguen cerradas en torno a la barra. Dos ayudantes la bajan y la retiran de inmediato después de cada lectura.</translation>
    </message>
    <message>
        <source>Begin with nothing on it and go down in small steps. It holds for her and this way of wearing it.</source>
        <translation>Empieza sin nada encima y baja en pasos pequeños. Vale para esta persona y para esta forma de ponérsela.</translation>
    </message>
</context>
<context>
    <name>AlongPage</name>
    <message>
        <source>Take along</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>to %1, for now</source>
        <translation>a %1, por ahora</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>There is no kit elsewhere to take along.</source>
        <translation>No hay material en otro lugar para llevar.</translation>
    </message>
    <message>
        <source>Tap what comes along. It is the same thing, so its measurements come with it; where it belongs is kept, and a tap sends it back.</source>
        <translation>Toca lo que se lleva. Es la misma pieza, así que sus mediciones van con ella; se guarda a dónde pertenece, y un toque la devuelve.</translation>
    </message>
    <message>
        <source>comes along</source>
        <translation>se lleva</translation>
    </message>
    <message>
        <source>goes back</source>
        <translation>vuelve</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>no está aquí</translation>
    </message>
</context>
<context>
    <name>AlongView</name>
    <message>
        <source>belongs to no venue</source>
        <translation>no pertenece a ningún lugar</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>pertenece a %1</translation>
    </message>
    <message>
        <source>%1, at %2 now</source>
        <translation>%1, ahora en %2</translation>
    </message>
    <message numerus="yes">
        <source>%n come along</source>
        <translation>
            <numerusform>%n se lleva</numerusform>
            <numerusform>%n se llevan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n go back</source>
        <translation>
            <numerusform>%n vuelve</numerusform>
            <numerusform>%n vuelven</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>tick what comes along</source>
        <translation>marca lo que se lleva</translation>
    </message>
</context>
<context>
    <name>AnswerCard</name>
    <message>
        <source>iron: %1</source>
        <translation>hierro: %1</translation>
    </message>
    <message>
        <source>Hang this one</source>
        <translation>Colgar este</translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message>
        <source>What is here</source>
        <translation>Lo que hay aquí</translation>
    </message>
    <message>
        <source>choose a venue in Kit first</source>
        <translation>elige antes un lugar en Material</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>SIGUIENTE</translation>
    </message>
    <message>
        <source>Something that is not on the list</source>
        <translation>Algo que no está en la lista</translation>
    </message>
    <message>
        <source>Leave and come back: what was begun waits as it was typed.</source>
        <translation>Sal y vuelve: lo empezado espera tal como se tecleó.</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
</context>
<context>
    <name>ArrivalView</name>
    <message>
        <source>not on the list yet</source>
        <translation>aún no está en la lista</translation>
    </message>
    <message>
        <source>begun, not kept</source>
        <translation>empezado, sin guardar</translation>
    </message>
    <message>
        <source>%1, out of use</source>
        <translation>%1, fuera de uso</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>Nothing is on the list yet</source>
        <translation>Aún no hay nada en la lista</translation>
    </message>
    <message>
        <source>%1 of %2 are known</source>
        <translation>Se conocen %1 de %2</translation>
    </message>
</context>
<context>
    <name>AskSheet</name>
    <message>
        <source>NEXT</source>
        <translation>SIGUIENTE</translation>
    </message>
    <message>
        <source>IT IS RIGHT</source>
        <translation>ES CORRECTO</translation>
    </message>
</context>
<context>
    <name>AthleteEditor</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún no hay</translation>
    </message>
    <message>
        <source>the height has changed since they were taken</source>
        <translation>la estatura ha cambiado desde que se tomaron</translation>
    </message>
    <message>
        <source>may have grown since they were taken</source>
        <translation>puede haber crecido desde que se tomaron</translation>
    </message>
    <message>
        <source>Born in</source>
        <translation>Nació en</translation>
    </message>
    <message>
        <source>comes before body mass, height and notes</source>
        <translation>va antes que masa corporal, estatura y notas</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>AthletePage</name>
    <message>
        <source>New athlete</source>
        <translation>Alta de atleta</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Bar marks</source>
        <translation>Marcas de la barra</translation>
    </message>
    <message>
        <source>Set-ups</source>
        <translation>Montajes</translation>
    </message>
    <message>
        <source>Take bar marks again</source>
        <translation>Volver a tomar las marcas</translation>
    </message>
    <message>
        <source>Measured by day</source>
        <translation>Medido por día</translation>
    </message>
    <message>
        <source>look back, or put one right</source>
        <translation>mira atrás o corrige una</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Menor de 18</translation>
    </message>
    <message>
        <source>Until a parent or guardian has agreed, only name, squad and loads are kept. Your local rules may ask for more.</source>
        <translation>Hasta que la madre, el padre o el tutor dé permiso, solo se guardan nombre, plantel y cargas. Tus normas locales pueden pedir más.</translation>
    </message>
    <message>
        <source>Guardian&apos;s agreement</source>
        <translation>Permiso de los padres</translation>
    </message>
    <message>
        <source>who agreed, and when</source>
        <translation>quién dio permiso y cuándo</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>no consta</translation>
    </message>
    <message>
        <source>Notes; no diagnoses</source>
        <translation>Notas; sin diagnósticos</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>What is here</source>
        <translation>Lo que hay aquí</translation>
    </message>
    <message>
        <source>and she may use</source>
        <translation>y puede usar</translation>
    </message>
</context>
<context>
    <name>BandEditor</name>
    <message>
        <source>Length at rest</source>
        <translation>Longitud en reposo</translation>
    </message>
    <message>
        <source>hook to hook, hanging loose</source>
        <translation>de gancho a gancho, colgando suelta</translation>
    </message>
    <message>
        <source>what hangs on it</source>
        <translation>lo que cuelga de ella</translation>
    </message>
    <message>
        <source>hook to hook</source>
        <translation>de gancho a gancho</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>At rest it is %1: with a load on it is longer.</source>
        <translation>En reposo mide %1: con carga es más larga.</translation>
    </message>
    <message>
        <source>Pull by length: not known yet</source>
        <translation>Tracción por longitud: aún no se sabe</translation>
    </message>
    <message>
        <source>Pulls %1 at %2</source>
        <translation>Tira %1 a %2</translation>
    </message>
    <message>
        <source>This curve falls between the readings. Choose another, or hang again.</source>
        <translation>Esta curva baja entre las lecturas. Elige otra o cuelga de nuevo.</translation>
    </message>
    <message>
        <source>%1, left out</source>
        <translation>%1, omitida</translation>
    </message>
    <message>
        <source>%1, odd</source>
        <translation>%1, no cuadra</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>medida hasta %1</translation>
    </message>
    <message>
        <source>a straight line</source>
        <translation>una línea recta</translation>
    </message>
    <message>
        <source>a bent line</source>
        <translation>una línea curva</translation>
    </message>
    <message>
        <source>rubber&apos;s own curve</source>
        <translation>la curva propia de la goma</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, your choice.</source>
        <translation>Trazada por las lecturas: %1, elegida por ti.</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, until there are five of them.</source>
        <translation>Trazada por las lecturas: %1, hasta que haya cinco.</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, which fits best.</source>
        <translation>Trazada por las lecturas: %1, la que mejor se ajusta.</translation>
    </message>
    <message>
        <source>Hanging %1 lies %2 over the line of the others</source>
        <translation>La colgada %1 queda %2 por encima de la línea de las demás</translation>
    </message>
    <message>
        <source>Hanging %1 lies %2 under the line of the others</source>
        <translation>La colgada %1 queda %2 por debajo de la línea de las demás</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>no cuadra</translation>
    </message>
    <message>
        <source>read while taking off</source>
        <translation>leída al descargar</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>Band, %1 at rest</source>
        <translation>Banda, %1 en reposo</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Banda</translation>
    </message>
</context>
<context>
    <name>BandGuide</name>
    <message>
        <source>How long is it at rest?</source>
        <translation>¿Cuánto mide en reposo?</translation>
    </message>
    <message>
        <source>What is left on it?</source>
        <translation>¿Qué queda colgado?</translation>
    </message>
    <message>
        <source>What hangs on it?</source>
        <translation>¿Qué cuelga de ella?</translation>
    </message>
    <message>
        <source>How long is it now?</source>
        <translation>¿Cuánto mide ahora?</translation>
    </message>
    <message>
        <source>Measure a band</source>
        <translation>Medir una banda</translation>
    </message>
    <message>
        <source>first look it over</source>
        <translation>primero, revísala</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>sin nada colgado</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>lectura %1</translation>
    </message>
    <message>
        <source>readings: %1</source>
        <translation>lecturas: %1</translation>
    </message>
    <message>
        <source>Hanging loose. The tape runs from hook to hook, inside.</source>
        <translation>Colgando suelta. La cinta métrica va de gancho a gancho, por dentro.</translation>
    </message>
    <message>
        <source>Stand out of the band&apos;s line.</source>
        <translation>Quédate fuera de la línea de la banda.</translation>
    </message>
    <message>
        <source>Take it off piece by piece. Stand out of the band&apos;s line.</source>
        <translation>Descarga pieza por pieza. Quédate fuera de la línea de la banda.</translation>
    </message>
    <message>
        <source>Plates of known mass, the strap with them. Stand out of the band&apos;s line.</source>
        <translation>Discos de masa conocida, contando la correa. Quédate fuera de la línea de la banda.</translation>
    </message>
    <message>
        <source>Hook to hook, once it hangs still.</source>
        <translation>De gancho a gancho, cuando ya no se mueva.</translation>
    </message>
    <message>
        <source>Good enough up to %1.</source>
        <translation>Suficiente hasta %1.</translation>
    </message>
    <message>
        <source>One more at about %1 would make it surer.</source>
        <translation>Una más, alrededor de %1, la haría más fiable.</translation>
    </message>
    <message>
        <source>Good enough as it is</source>
        <translation>Así es suficiente</translation>
    </message>
</context>
<context>
    <name>BandPage</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Measure a band</source>
        <translation>Medir una banda</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>hang plates, read the length</source>
        <translation>cuelga discos, lee la longitud</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Hang a mass</source>
        <translation>Colgar una masa</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>best</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>recta</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>curva</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>goma</translation>
    </message>
    <message>
        <source>Hang it again, or leave it out.</source>
        <translation>Cuelga otra vez u omítela.</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>¿Cuántas?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>dos iguales</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>The second stands on this one&apos;s measurement, with 3 % more doubt about its length. Measure it too and hang each on its own side to be surer.</source>
        <translation>La segunda se basa en la medición de esta, con un 3 % más de duda sobre su longitud. Para que sea más fiable, mídela también y cuelga cada una en su lado.</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Nombre, si le das uno</translation>
    </message>
</context>
<context>
    <name>BandStepsPage</name>
    <message>
        <source>Looked over: begin</source>
        <translation>Revisada: empezar</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Con eso basta</translation>
    </message>
    <message>
        <source>Next reading</source>
        <translation>Siguiente lectura</translation>
    </message>
    <message>
        <source>adding</source>
        <translation>cargando</translation>
    </message>
    <message>
        <source>taking off</source>
        <translation>descargando</translation>
    </message>
    <message>
        <source>A stretched band stores energy</source>
        <translation>Una banda estirada almacena energía</translation>
    </message>
    <message>
        <source>Look it over, stretched by hand: a cut or a crack, and it is not measured but thrown away.</source>
        <translation>Revísala, estirada a mano: con un corte o una grieta no se mide, se desecha.</translation>
    </message>
    <message>
        <source>Hang it from something that holds more than what goes on it; a rack is bolted or weighed down.</source>
        <translation>Cuélgala de algo que aguante más que lo que le vas a poner; un rack va atornillado o lastrado.</translation>
    </message>
    <message>
        <source>Stand out of its line. Put plates on low over the floor, and never let go of a stretched band.</source>
        <translation>Quédate fuera de su línea. Pon los discos a poca altura del suelo y nunca sueltes una banda estirada.</translation>
    </message>
    <message>
        <source>A scale in between carries no more than it is made for.</source>
        <translation>Una báscula intermedia no debe soportar más de lo que admite.</translation>
    </message>
    <message>
        <source>One more length</source>
        <translation>Una longitud más</translation>
    </message>
    <message>
        <source>Read while taking off</source>
        <translation>Lectura al descargar</translation>
    </message>
</context>
<context>
    <name>BarEditor</name>
    <message>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <source>weighed, sleeves and all</source>
        <translation>pesada con mangas y todo</translation>
    </message>
    <message>
        <source>its own mass, sleeves and all</source>
        <translation>su propia masa, con mangas y todo</translation>
    </message>
    <message>
        <source>Collars, both</source>
        <translation>Cierres, los dos</translation>
    </message>
    <message>
        <source>Room on one sleeve</source>
        <translation>Espacio en una manga</translation>
    </message>
    <message>
        <source>for plates; may be left out</source>
        <translation>para discos; se puede omitir</translation>
    </message>
    <message>
        <source>%1 cannot be hung with the plates here.</source>
        <translation>%1 no se puede cargar con los discos de aquí.</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message numerus="yes">
        <source>%n plates, weighed: %1 each</source>
        <translation>
            <numerusform>%n disco ya pesado: %1</numerusform>
            <numerusform>%n discos ya pesados: %1 cada uno</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n plates</source>
        <translation>
            <numerusform>%n disco</numerusform>
            <numerusform>%n discos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BarPage</name>
    <message>
        <source>Bar and plates</source>
        <translation>Barra y discos</translation>
    </message>
    <message>
        <source>what is here to hang</source>
        <translation>lo que hay aquí para cargar</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Plates weigh</source>
        <translation>Los discos pesan</translation>
    </message>
    <message>
        <source>as marked</source>
        <translation>según la marca</translation>
    </message>
    <message>
        <source>2 % either way</source>
        <translation>2 % en más o en menos</translation>
    </message>
    <message>
        <source>Weighed, or made to a competition standard.</source>
        <translation>Ya pesados, o hechos según una norma de competición.</translation>
    </message>
    <message>
        <source>Gym plates nobody has weighed: our own allowance.</source>
        <translation>Discos de gimnasio que nadie ha pesado: margen nuestro.</translation>
    </message>
    <message>
        <source>Other plates</source>
        <translation>Otros discos</translation>
    </message>
</context>
<context>
    <name>CapEditor</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Choose the lift first.</source>
        <translation>Elige primero el ejercicio.</translation>
    </message>
    <message>
        <source>No maximum of that lift is known yet: test or estimate it, and the cap is known.</source>
        <translation>Aún no se conoce ningún máximo de ese ejercicio: pruébalo o estímalo, y se sabrá el tope.</translation>
    </message>
    <message>
        <source>With its give-or-take at most %1, by her lowest estimate of %2.</source>
        <translation>Contado el margen, como mucho %1, según su estimación más baja del %2.</translation>
    </message>
    <message>
        <source>How much of it</source>
        <translation>Qué parte</translation>
    </message>
    <message>
        <source>of her lowest estimate</source>
        <translation>de su estimación más baja</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>CapPage</name>
    <message>
        <source>%1: held against</source>
        <translation>%1: con qué se compara</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Of which lift of hers</source>
        <translation>De qué ejercicio suyo</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>sin elegir</translation>
    </message>
    <message>
        <source>How much of it</source>
        <translation>Qué parte</translation>
    </message>
    <message>
        <source>Seventy per cent is ours to begin with: common practice, no source. Held against it is the load with its give-or-take.</source>
        <translation>Setenta por ciento es nuestro punto de partida: práctica habitual, sin fuente. Con eso se compara la carga con su margen.</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>Looked over</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>revisado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ChainEditor</name>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>first link to last, pulled straight</source>
        <translation>del primer eslabón al último, estirada recta</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>all of it, on the scale</source>
        <translation>entera, en la báscula</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Alambre</translation>
    </message>
    <message>
        <source>its real thickness, not the trade size</source>
        <translation>su grosor real, no la medida comercial</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>inside length of one link</source>
        <translation>largo interior de un eslabón</translation>
    </message>
    <message>
        <source>Inner width</source>
        <translation>Ancho interior</translation>
    </message>
    <message>
        <source>inside width of one link</source>
        <translation>ancho interior de un eslabón</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Mass per metre: not known yet</source>
        <translation>Masa por metro: aún no se sabe</translation>
    </message>
    <message>
        <source>It comes off the floor a link at a time: %1.</source>
        <translation>Se despega del suelo eslabón a eslabón: %1.</translation>
    </message>
    <message>
        <source>Chain, %1, %2</source>
        <translation>Cadena, %1, %2</translation>
    </message>
    <message>
        <source>Chain, %1</source>
        <translation>Cadena, %1</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>Cadena</translation>
    </message>
</context>
<context>
    <name>ChainGuide</name>
    <message>
        <source>How long is it?</source>
        <translation>¿Cuánto mide?</translation>
    </message>
    <message>
        <source>What does it weigh?</source>
        <translation>¿Cuánto pesa?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>¿De cuánto es su escalón?</translation>
    </message>
    <message>
        <source>How thick is the wire?</source>
        <translation>¿Qué grosor tiene el alambre?</translation>
    </message>
    <message>
        <source>How long is a link inside?</source>
        <translation>¿Qué largo tiene un eslabón por dentro?</translation>
    </message>
    <message>
        <source>How wide is a link inside?</source>
        <translation>¿Qué ancho tiene un eslabón por dentro?</translation>
    </message>
    <message>
        <source>Measure a chain</source>
        <translation>Medir una cadena</translation>
    </message>
    <message>
        <source>step 1</source>
        <translation>paso 1</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
    <message>
        <source>Straight on the floor, first link to last.</source>
        <translation>Recta en el suelo, del primer eslabón al último.</translation>
    </message>
    <message>
        <source>All of it on the scale and off the floor; read when it hangs still. Not more than the scale is made for, feet clear.</source>
        <translation>Entera en la báscula y sin tocar el suelo; lee cuando ya no se mueva. No más de lo que admite la báscula; los pies, apartados.</translation>
    </message>
    <message>
        <source>Across the round of one link: its real thickness, not the trade size.</source>
        <translation>A través del redondo de un eslabón: su grosor real, no la medida comercial.</translation>
    </message>
    <message>
        <source>Inside, end to end of one link.</source>
        <translation>Por dentro, de punta a punta de un eslabón.</translation>
    </message>
    <message>
        <source>A long link: take the middle between its least inner width and its greatest outer width less two wires.</source>
        <translation>Un eslabón largo: toma el punto medio entre su menor ancho interior y su mayor ancho exterior menos dos veces el alambre.</translation>
    </message>
    <message>
        <source>Inside, side to side of one link.</source>
        <translation>Por dentro, de lado a lado de un eslabón.</translation>
    </message>
</context>
<context>
    <name>ChainPage</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Measure a chain</source>
        <translation>Medir una cadena</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Nombre, si le das uno</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Según</translation>
    </message>
    <message>
        <source>weighing it</source>
        <translation>su peso</translation>
    </message>
    <message>
        <source>its links</source>
        <translation>sus eslabones</translation>
    </message>
    <message>
        <source>Gauged within 3 %. Weighing is better. Of a long-link chain take the middle between the least inner and the greatest outer width, less two wires.</source>
        <translation>Calibrada acierta dentro del 3 %. Pesarla es mejor. Si es una cadena de eslabón largo, toma el punto medio entre el menor ancho interior y el mayor exterior menos dos veces el alambre.</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>¿Cuántas?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>dos iguales</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
</context>
<context>
    <name>ChainStepsPage</name>
    <message>
        <source>What hangs of a chain is what it weighs, so its mass by length counts. Weighing is surer: gauged is within 6 %.</source>
        <translation>De una cadena pesa lo que cuelga, así que cuenta su masa por longitud. Pesarla es más fiable: calibrada acierta dentro del 6 %.</translation>
    </message>
    <message>
        <source>Weigh it</source>
        <translation>Pesarla</translation>
    </message>
    <message>
        <source>scale and tape</source>
        <translation>báscula y cinta métrica</translation>
    </message>
    <message>
        <source>Gauge one link</source>
        <translation>Calibrar un eslabón</translation>
    </message>
    <message>
        <source>caliper and tape</source>
        <translation>calibre y cinta métrica</translation>
    </message>
</context>
<context>
    <name>ChoiceRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
</context>
<context>
    <name>ClearanceEditor</name>
    <message>
        <source>Choose the lift.</source>
        <translation>Elige el ejercicio.</translation>
    </message>
    <message>
        <source>Choose the method.</source>
        <translation>Elige el método.</translation>
    </message>
    <message>
        <source>until it is taken back</source>
        <translation>hasta que se retire</translation>
    </message>
</context>
<context>
    <name>ClearancePage</name>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>is cleared for</source>
        <translation>tiene autorización para</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Autorizaciones</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>cuando se diga quién</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Ejercicio</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>sin elegir</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Who gives it</source>
        <translation>Quién la da</translation>
    </message>
    <message>
        <source>whoever is licensed or responsible here</source>
        <translation>quien esté habilitado o sea responsable aquí</translation>
    </message>
    <message>
        <source>She may be under age. Is it given knowing that?</source>
        <translation>Puede ser menor de edad. ¿Se da sabiéndolo?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>yes, by name</source>
        <translation>sí, con su nombre</translation>
    </message>
    <message>
        <source>Nothing medical belongs here. What a clinician decides goes before it, and so do local rules.</source>
        <translation>Aquí no va nada médico. Lo que decida el personal sanitario va antes, y también las normas locales.</translation>
    </message>
</context>
<context>
    <name>ClearancesPage</name>
    <message>
        <source>cleared for</source>
        <translation>con autorización para</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>CLEARED FOR MORE</source>
        <translation>AUTORIZAR MÁS</translation>
    </message>
    <message>
        <source>a lift and a method</source>
        <translation>un ejercicio y un método</translation>
    </message>
    <message>
        <source>A clearance has to wait</source>
        <translation>Una autorización tiene que esperar</translation>
    </message>
    <message>
        <source>Nobody has cleared her for anything yet.</source>
        <translation>Nadie la ha autorizado todavía para nada.</translation>
    </message>
    <message>
        <source>Clearance is given by whoever is licensed or responsible here; Steelyard only remembers it. Nothing medical is kept: who, for what, and until when.</source>
        <translation>La autorización la da quien esté habilitado o sea responsable aquí; Steelyard solo la recuerda. No se guarda nada médico: quién, para qué y hasta cuándo.</translation>
    </message>
</context>
<context>
    <name>CodeGroups</name>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>mira otra vez</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>as on paper</source>
        <translation>como en el papel</translation>
    </message>
</context>
<context>
    <name>CodePage</name>
    <message>
        <source>Recovery code</source>
        <translation>Código de rescate</translation>
    </message>
    <message>
        <source>shown this once, and kept nowhere</source>
        <translation>se muestra solo esta vez y no se guarda en ninguna parte</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>IT IS ON PAPER</source>
        <translation>ESTÁ EN PAPEL</translation>
    </message>
    <message>
        <source>The recovery code, to be read by eye</source>
        <translation>El código de rescate, para leer con la vista</translation>
    </message>
    <message>
        <source>Write its five groups on paper now. The last sign of each group finds mistakes, so nothing is lost by writing badly.</source>
        <translation>Escribe ahora en papel sus cinco grupos. El último signo de cada grupo descubre errores, así que nada se pierde por escribir mal.</translation>
    </message>
    <message>
        <source>Keep the paper where your squad&apos;s papers are locked away, and not with this device.</source>
        <translation>Guarda el papel donde estén bajo llave los papeles de tu plantel, y no con este dispositivo.</translation>
    </message>
</context>
<context>
    <name>ContestedCard</name>
    <message>
        <source>stands now</source>
        <translation>vale ahora</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>elegir</translation>
    </message>
</context>
<context>
    <name>CopyListPage</name>
    <message>
        <source>Copy a list</source>
        <translation>Copiar una lista</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>COPY</source>
        <translation>COPIAR</translation>
    </message>
    <message>
        <source>The list of</source>
        <translation>La lista de</translation>
    </message>
    <message>
        <source>For a place with like kit of its own: names and counts are copied, measurements are not. Another chain weighs something else; each is measured there before it hangs. Kit that you carry there is taken along instead.</source>
        <translation>Para un lugar que tiene su propio material parecido: se copian nombres y cantidades, no mediciones. Otra cadena pesa otra cosa; cada una se mide allí antes de colgarla. El material que viaja contigo, en cambio, se lleva.</translation>
    </message>
</context>
<context>
    <name>CopyListView</name>
    <message>
        <source>a pair</source>
        <translation>un par</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>nothing to copy</source>
        <translation>nada que copiar</translation>
    </message>
    <message numerus="yes">
        <source>%n things, still to be measured</source>
        <translation>
            <numerusform>%n pieza, aún por medir</numerusform>
            <numerusform>%n piezas, aún por medir</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CountRow</name>
    <message>
        <source>%1: one less</source>
        <translation>%1: uno menos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: one more</source>
        <translation>%1: uno más</translation>
    </message>
</context>
<context>
    <name>DayEditor</name>
    <message>
        <source>Day of the month</source>
        <translation>Día del mes</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Ese día no existe: mira el día y el mes.</translation>
    </message>
    <message>
        <source>That day lies ahead.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
</context>
<context>
    <name>DayStatusPage</name>
    <message>
        <source>may train today</source>
        <translation>puede entrenar hoy</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>SET ANEW</source>
        <translation>PONER DE NUEVO</translation>
    </message>
    <message>
        <source>all, some or none</source>
        <translation>todo, algo o nada</translation>
    </message>
    <message>
        <source>Each of them holds: what one forbids, none of the others allows.</source>
        <translation>Cada una vale: lo que una prohíbe no lo permite ninguna otra.</translation>
    </message>
    <message>
        <source>Whoever is licensed or responsible here decides. Note who and until when, and what not to do; no diagnoses.</source>
        <translation>Decide quien esté habilitado o sea responsable aquí. Anota quién, hasta cuándo y qué no; sin diagnósticos.</translation>
    </message>
    <message>
        <source>Other days</source>
        <translation>Otros días</translation>
    </message>
</context>
<context>
    <name>DeedLine</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
</context>
<context>
    <name>DeedsPage</name>
    <message>
        <source>Done lately</source>
        <translation>Hecho hace poco</translation>
    </message>
    <message>
        <source>a tap undoes it; the last 20</source>
        <translation>un toque lo deshace; los últimos 20</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Nothing was kept since the vault was opened, or all of it has been undone.</source>
        <translation>No se ha guardado nada desde que se abrió la caja fuerte, o se ha deshecho todo.</translation>
    </message>
</context>
<context>
    <name>DeedsView</name>
    <message>
        <source>something newer stands there: undo that first</source>
        <translation>ahí hay algo más nuevo: deshaz eso primero</translation>
    </message>
</context>
<context>
    <name>DeskWork</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>en todas partes</translation>
    </message>
</context>
<context>
    <name>DoorSheet</name>
    <message>
        <source>Back to %1</source>
        <translation>Volver a %1</translation>
    </message>
</context>
<context>
    <name>EccentricPage</name>
    <message>
        <source>Heavier on the way down</source>
        <translation>Más carga al bajar</translation>
    </message>
    <message>
        <source>for nobody yet</source>
        <translation>aún para nadie</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Fuera</translation>
    </message>
    <message>
        <source>HANG THIS BAR</source>
        <translation>COLGAR ESTA BARRA</translation>
    </message>
    <message>
        <source>What makes the way down heavier?</source>
        <translation>¿Qué hace más pesada la bajada?</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Con</translation>
    </message>
    <message>
        <source>release hooks</source>
        <translation>ganchos de suelta</translation>
    </message>
    <message>
        <source>partner lifts plates off</source>
        <translation>el compañero quita discos</translation>
    </message>
    <message>
        <source>partner pushes</source>
        <translation>el compañero empuja</translation>
    </message>
    <message>
        <source>bands let go</source>
        <translation>bandas que se sueltan</translation>
    </message>
    <message>
        <source>dumbbells dropped</source>
        <translation>mancuernas que se sueltan</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Se pide</translation>
    </message>
    <message>
        <source>in % of her 1RM</source>
        <translation>en % de su 1RM</translation>
    </message>
    <message>
        <source>as loads</source>
        <translation>como cargas</translation>
    </message>
    <message>
        <source>The way down in % of</source>
        <translation>La bajada en % de</translation>
    </message>
    <message>
        <source>her 1RM</source>
        <translation>su 1RM</translation>
    </message>
    <message>
        <source>the way up</source>
        <translation>la subida</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Se vuelve a poner</translation>
    </message>
    <message>
        <source>not in the set</source>
        <translation>no en la serie</translation>
    </message>
    <message>
        <source>at each rep</source>
        <translation>en cada repetición</translation>
    </message>
    <message>
        <source>at each cluster</source>
        <translation>en cada grupo</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>spotters, one at each end</source>
        <translation>ayudantes, uno en cada extremo</translation>
    </message>
    <message>
        <source>herself, bar in the rack</source>
        <translation>ella, con la barra en el rack</translation>
    </message>
    <message>
        <source>Hook, depth and safeties</source>
        <translation>Gancho, profundidad y barras de seguridad</translation>
    </message>
    <message>
        <source>Depth and safeties</source>
        <translation>Profundidad y barras de seguridad</translation>
    </message>
</context>
<context>
    <name>EndPage</name>
    <message>
        <source>Take it back?</source>
        <translation>¿Retirarla?</translation>
    </message>
    <message>
        <source>Lift it?</source>
        <translation>¿Levantarlo?</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Autorización</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>TAKE BACK</source>
        <translation>RETIRAR</translation>
    </message>
    <message>
        <source>LIFT IT</source>
        <translation>LEVANTAR</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>cuando se diga quién</translation>
    </message>
    <message>
        <source>from today on</source>
        <translation>desde hoy</translation>
    </message>
    <message>
        <source>Who takes it back</source>
        <translation>Quién la retira</translation>
    </message>
    <message>
        <source>Who lifts it</source>
        <translation>Quién lo levanta</translation>
    </message>
    <message>
        <source>Every clearance of hers for this lift and method goes with it, those to come too. The set-up page then says do not lift where it is needed.</source>
        <translation>Con ella se van todas sus autorizaciones para este ejercicio y método, también las futuras. Donde haga falta, la página del montaje dirá que no se levante.</translation>
    </message>
    <message>
        <source>What others have set holds on: each is lifted by itself.</source>
        <translation>Lo que han puesto otros sigue valiendo: cada uno se levanta por separado.</translation>
    </message>
    <message>
        <source>You can undo it until the vault is locked.</source>
        <translation>Puedes deshacerlo hasta que se bloquee la caja fuerte.</translation>
    </message>
</context>
<context>
    <name>ExampleStrip</name>
    <message>
        <source>EXAMPLE: nobody here is real</source>
        <translation>EJEMPLO: aquí nadie es real</translation>
    </message>
</context>
<context>
    <name>FactRow</name>
    <message>
        <source>filled in, not yet confirmed. %1</source>
        <translation>rellenado, aún sin confirmar. %1</translation>
    </message>
</context>
<context>
    <name>FieldEditor</name>
    <message>
        <source>not entered</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>GateForm</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>otro día</translation>
    </message>
    <message>
        <source>that day</source>
        <translation>solo ese día</translation>
    </message>
    <message numerus="yes">
        <source>%n weeks</source>
        <translation>
            <numerusform>%n semana</numerusform>
            <numerusform>%n semanas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to the end of %2</source>
        <translation>desde el %1 hasta el final del %2</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Ese día no existe: mira el día y el mes.</translation>
    </message>
    <message>
        <source>It would end before it begins: put a later last day, or none.</source>
        <translation>Acabaría antes de empezar: pon un último día posterior, o ninguno.</translation>
    </message>
</context>
<context>
    <name>GatePages</name>
    <message>
        <source>Which lift?</source>
        <translation>¿Qué ejercicio?</translation>
    </message>
    <message>
        <source>Which method?</source>
        <translation>¿Qué método?</translation>
    </message>
</context>
<context>
    <name>HangAsker</name>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Looking for the best</source>
        <translation>Buscando lo mejor</translation>
    </message>
    <message>
        <source>Nothing here may hang that way.</source>
        <translation>Nada de lo que hay puede colgarse así.</translation>
    </message>
    <message>
        <source>Nothing comes nearer with the kit that is here.</source>
        <translation>Nada se acerca más con el material que hay.</translation>
    </message>
    <message>
        <source>Not with the kit that is here. These come nearest.</source>
        <translation>No con el material que hay. Esto es lo más cercano.</translation>
    </message>
    <message>
        <source>Not with the kit that is here. What fails first: %1. These come nearest.</source>
        <translation>No con el material que hay. Lo primero que falla: %1. Esto es lo más cercano.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>per cent of the 1RM</source>
        <translation>por ciento del 1RM</translation>
    </message>
    <message>
        <source>1RM</source>
        <translation>1RM</translation>
    </message>
    <message>
        <source>of this lift, as it was lifted at that place; typed for now</source>
        <translation>de este ejercicio, tal como se levantó en ese punto; escrito por ahora</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The 1RM comes first</source>
        <translation>Primero, el 1RM</translation>
    </message>
    <message>
        <source>Key it above. It is typed for now: nothing here has tested it.</source>
        <translation>Escríbelo arriba. Es provisional: aquí nada lo ha comprobado.</translation>
    </message>
    <message>
        <source>Pull at three heights at least, from near her lowest to near her highest.</source>
        <translation>Tira al menos a tres alturas, desde cerca de la más baja hasta cerca de la más alta.</translation>
    </message>
    <message>
        <source>typed for now, not tested</source>
        <translation>por ahora, sin probar</translation>
    </message>
    <message>
        <source>filled in from her tests: %1, %2</source>
        <translation>tomado de sus pruebas: %1, %2</translation>
    </message>
</context>
<context>
    <name>HangChoice</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Anchored at</source>
        <translation>Anclada en</translation>
    </message>
    <message>
        <source>Hangs by</source>
        <translation>Cuelga de</translation>
    </message>
</context>
<context>
    <name>HangEditor</name>
    <message>
        <source>Lead</source>
        <translation>Correa</translation>
    </message>
    <message>
        <source>strap from the bar&apos;s middle to the first link</source>
        <translation>correa del centro de la barra al primer eslabón</translation>
    </message>
    <message>
        <source>Lead and hook weigh</source>
        <translation>Correa y gancho pesan</translation>
    </message>
    <message>
        <source>0 when it is next to nothing</source>
        <translation>0 si es casi nada</translation>
    </message>
    <message>
        <source>Height of the bunch</source>
        <translation>Altura del manojo</translation>
    </message>
    <message>
        <source>Anchor&apos;s height</source>
        <translation>Altura del anclaje</translation>
    </message>
    <message>
        <source>floor to where the band holds</source>
        <translation>del suelo a donde agarra la banda</translation>
    </message>
    <message>
        <source>Anchor held down by</source>
        <translation>Anclaje sujeto por</translation>
    </message>
    <message>
        <source>plates or a rack that stands loose; leave out when bolted</source>
        <translation>discos o un rack suelto; omítelo si está atornillado</translation>
    </message>
    <message>
        <source>In front of the bar by</source>
        <translation>Por delante de la barra</translation>
    </message>
    <message>
        <source>Behind the bar by</source>
        <translation>Por detrás de la barra</translation>
    </message>
    <message>
        <source>Goes round a bar of</source>
        <translation>Rodea una barra de</translation>
    </message>
    <message>
        <source>thickness of the handle or peg</source>
        <translation>grosor de la empuñadura o de la clavija</translation>
    </message>
    <message>
        <source>Bar on the chest</source>
        <translation>Barra en el pecho</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle where it touches; her bottom mark if left out</source>
        <translation>del suelo al centro de la barra donde toca; si se omite, su marca de abajo</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
</context>
<context>
    <name>HangPage</name>
    <message>
        <source>how it hangs</source>
        <translation>cómo cuelga</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Descolgar</translation>
    </message>
    <message>
        <source>DONE</source>
        <translation>HECHO</translation>
    </message>
    <message>
        <source>see what she lifts</source>
        <translation>ver lo que levanta</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambos</translation>
    </message>
    <message>
        <source>left only</source>
        <translation>solo izquierda</translation>
    </message>
    <message>
        <source>right only</source>
        <translation>solo derecha</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Cuelga</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>recta</translation>
    </message>
    <message>
        <source>doubled</source>
        <translation>doblada</translation>
    </message>
    <message>
        <source>bunched</source>
        <translation>en manojo</translation>
    </message>
    <message>
        <source>single</source>
        <translation>simple</translation>
    </message>
    <message>
        <source>Anchored</source>
        <translation>Anclada</translation>
    </message>
    <message>
        <source>below</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>above</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>Anchor, to the bar</source>
        <translation>Anclaje, desde la barra</translation>
    </message>
    <message>
        <source>in line</source>
        <translation>en línea</translation>
    </message>
    <message>
        <source>in front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>detrás</translation>
    </message>
    <message>
        <source>For a press from the chest: worn in the middle of the bar, it helps most where the bar touches her. In any other lift it is for you to say whether that holds.</source>
        <translation>Para un press desde el pecho: puesta en el centro de la barra, ayuda al máximo donde la barra toca el cuerpo. En cualquier otro ejercicio eres tú quien dice si eso vale.</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Medir otra vez</translation>
    </message>
</context>
<context>
    <name>HangingLine</name>
    <message>
        <source>Hanging %1, mass: %2</source>
        <translation>Colgada %1, masa: %2</translation>
    </message>
    <message>
        <source>Hanging %1, length: %2</source>
        <translation>Colgada %1, longitud: %2</translation>
    </message>
    <message>
        <source>Take hanging %1 in again</source>
        <translation>Volver a incluir la colgada %1</translation>
    </message>
    <message>
        <source>Leave hanging %1 out</source>
        <translation>Omitir la colgada %1</translation>
    </message>
    <message>
        <source>Take in again</source>
        <translation>Volver a incluir</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
</context>
<context>
    <name>HeightPicture</name>
    <message>
        <source>iron</source>
        <translation>hierro</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>cadena</translation>
    </message>
    <message>
        <source>band</source>
        <translation>banda</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>read lower</source>
        <translation>leer más abajo</translation>
    </message>
    <message>
        <source>read higher</source>
        <translation>leer más arriba</translation>
    </message>
    <message>
        <source>Tap to read the pull at a height</source>
        <translation>Toca para leer la tracción a una altura</translation>
    </message>
</context>
<context>
    <name>HeightsPage</name>
    <message>
        <source>At each height</source>
        <translation>En cada altura</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Heights are from the floor to the bar&apos;s middle. ± is for 19 times in 20; each part&apos;s is its own, and they do not simply add up: JCGM 100:2008.</source>
        <translation>Alturas desde el suelo hasta el centro de la barra. ± vale para 19 de cada 20 veces; cada parte tiene la suya, y no se suman sin más: JCGM 100:2008.</translation>
    </message>
</context>
<context>
    <name>HeightsView</name>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>sticking zone begins</source>
        <translation>empieza la zona de estancamiento</translation>
    </message>
    <message>
        <source>sticking zone ends</source>
        <translation>acaba la zona de estancamiento</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>chain %1</source>
        <translation>cadena %1</translation>
    </message>
    <message>
        <source>band %1</source>
        <translation>banda %1</translation>
    </message>
    <message>
        <source>aid %1</source>
        <translation>ayuda %1</translation>
    </message>
    <message>
        <source>iron %1</source>
        <translation>hierro %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>HerePage</name>
    <message>
        <source>What she may use</source>
        <translation>Lo que puede usar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Enter what is here</source>
        <translation>Anotar lo que hay aquí</translation>
    </message>
    <message>
        <source>Local rules, and whoever is licensed or responsible here, go before this list.</source>
        <translation>Las normas locales y quien esté habilitado o sea responsable aquí van antes que esta lista.</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
</context>
<context>
    <name>HereRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>HereView</name>
    <message>
        <source>Choose in Kit where you are: a list is of one venue.</source>
        <translation>Elige en Material dónde estás: una lista es de un solo lugar.</translation>
    </message>
    <message>
        <source>Choose in Squad whom it is for.</source>
        <translation>Elige en Plantel para quién es.</translation>
    </message>
    <message>
        <source>Nothing of the kind is on the list of this venue. Enter it in Kit: a tyre takes a minute.</source>
        <translation>En la lista de este lugar no hay nada de esto. Anótalo en Material: una rueda lleva un minuto.</translation>
    </message>
    <message>
        <source>%1 she may use, %2 to look over first, %3 not now</source>
        <translation>%1 puede usar, %2 hay que revisar antes, %3 ahora no</translation>
    </message>
    <message>
        <source>%1, set to %2 at most</source>
        <translation>%1, puesta en %2 como mucho</translation>
    </message>
</context>
<context>
    <name>HookMeasuresPage</name>
    <message>
        <source>Hook, depth and safeties</source>
        <translation>Gancho, profundidad y barras de seguridad</translation>
    </message>
    <message>
        <source>Depth and safeties</source>
        <translation>Profundidad y barras de seguridad</translation>
    </message>
    <message>
        <source>for nobody yet</source>
        <translation>aún para nadie</translation>
    </message>
    <message>
        <source>Way down</source>
        <translation>Bajada</translation>
    </message>
    <message>
        <source>BACK TO THE LOAD</source>
        <translation>VOLVER A LA CARGA</translation>
    </message>
    <message>
        <source>The hook</source>
        <translation>El gancho</translation>
    </message>
    <message>
        <source>How deep she goes</source>
        <translation>Hasta dónde baja</translation>
    </message>
    <message>
        <source>Sides and safeties</source>
        <translation>Lados y barras de seguridad</translation>
    </message>
    <message>
        <source>Rehearse with empty hooks and set the safeties before anything is hung on them. A bar that comes down one degree out of level lets one side go late: it has to come down level.</source>
        <translation>Ensaya con los ganchos vacíos y ajusta los seguros antes de colgar nada. Una barra que baja inclinada un grado suelta tarde un lado: tiene que bajar nivelada.</translation>
    </message>
</context>
<context>
    <name>HungDrawing</name>
    <message>
        <source>%1; the bar half way, at %2</source>
        <translation>%1; la barra a medio camino, a %2</translation>
    </message>
</context>
<context>
    <name>ImplementEditor</name>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>It holds gas: nobody opens, drops or lifts it until whoever owns it has let it off.</source>
        <translation>Tiene gas: nadie lo abre, lo deja caer ni lo levanta hasta que quien sea su dueño le haya soltado el gas.</translation>
    </message>
    <message>
        <source>Nobody knows whether it holds gas: it is used for nothing until somebody does.</source>
        <translation>Nadie sabe si tiene gas: no se usa para nada hasta que alguien lo sepa.</translation>
    </message>
    <message>
        <source>Still to do: %1</source>
        <translation>Por hacer: %1</translation>
    </message>
</context>
<context>
    <name>ImplementPages</name>
    <message>
        <source>Which lift?</source>
        <translation>¿Qué ejercicio?</translation>
    </message>
    <message>
        <source>Held against</source>
        <translation>Comparado con</translation>
    </message>
</context>
<context>
    <name>InspectPage</name>
    <message>
        <source>Look over: %1</source>
        <translation>Revisar: %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>BACK IN USE</source>
        <translation>DE NUEVO EN USO</translation>
    </message>
    <message>
        <source>FIT FOR USE</source>
        <translation>APTO</translation>
    </message>
    <message>
        <source>OUT OF USE</source>
        <translation>FUERA DE USO</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>looked over today</source>
        <translation>revisado hoy</translation>
    </message>
    <message>
        <source>once it is said what was found</source>
        <translation>cuando se diga qué se encontró</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Se encontró</translation>
    </message>
    <message>
        <source>Out of use: it is offered nowhere, and no set-up with it is ready. What is worn or broken is not mended by looking: bring it back only once it was put right and found fit by whoever answers for the kit.</source>
        <translation>Fuera de uso: no se ofrece en ninguna parte, y ningún montaje que lo use está listo. Lo gastado o roto no se arregla con mirarlo: devuélvelo al uso solo cuando se haya arreglado y lo haya dado por apto quien responde del material.</translation>
    </message>
    <message>
        <source>What was done, if you say so</source>
        <translation>Qué se hizo, si lo dices</translation>
    </message>
    <message>
        <source>Where, or what else</source>
        <translation>Dónde, o qué más</translation>
    </message>
    <message>
        <source>Doubtful is out of use. What the maker says and the rules of the house go first.</source>
        <translation>Lo dudoso queda fuera de uso. Lo que dice el fabricante y las normas de la casa van primero.</translation>
    </message>
</context>
<context>
    <name>InspectionEditor</name>
    <message>
        <source>looked over %1: nothing wrong</source>
        <translation>revisado %1: sin defectos</translation>
    </message>
    <message>
        <source>nothing wrong</source>
        <translation>sin defectos</translation>
    </message>
</context>
<context>
    <name>IronEditor</name>
    <message>
        <source>Marked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>on each of them</source>
        <translation>en cada uno</translation>
    </message>
    <message>
        <source>on the bar, or what it counts as</source>
        <translation>en la barra, o por cuánto cuenta</translation>
    </message>
    <message>
        <source>On the scale together</source>
        <translation>Juntos en la báscula</translation>
    </message>
    <message>
        <source>how many of them</source>
        <translation>cuántos son</translation>
    </message>
    <message>
        <source>plates</source>
        <translation>discos</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>La báscula indica</translation>
    </message>
    <message>
        <source>for all of them</source>
        <translation>para todos</translation>
    </message>
    <message>
        <source>for the whole bar</source>
        <translation>para toda la barra</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Weigh a bar or plates</source>
        <translation>Pesar una barra o discos</translation>
    </message>
    <message>
        <source>What is marked is what it was meant to weigh. Hang it level and clear of the floor, from a hook that holds more than it weighs, and never more than the scale is made for; feet clear.</source>
        <translation>Lo marcado es lo que debía pesar. Cuélgalo nivelado y sin tocar el suelo, de un gancho que aguante más de lo que pesa, y nunca más de lo que admite la báscula; los pies, apartados.</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>a bar</source>
        <translation>una barra</translation>
    </message>
    <message>
        <source>plates of one kind</source>
        <translation>discos de un tipo</translation>
    </message>
    <message>
        <source>whole, on one scale</source>
        <translation>entera, en una sola báscula</translation>
    </message>
    <message>
        <source>several at once are surer</source>
        <translation>varios a la vez es más fiable</translation>
    </message>
    <message>
        <source>What is marked on it?</source>
        <translation>¿Qué lleva marcado?</translation>
    </message>
    <message>
        <source>How many at once?</source>
        <translation>¿Cuántos a la vez?</translation>
    </message>
    <message>
        <source>What does the scale read?</source>
        <translation>¿Qué indica la báscula?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>¿De cuánto es su escalón?</translation>
    </message>
    <message>
        <source>The figure on each plate.</source>
        <translation>La cifra de cada disco.</translation>
    </message>
    <message>
        <source>The figure on its end; without one, what it counts as.</source>
        <translation>La cifra de su extremo; si no la hay, por cuánto cuenta.</translation>
    </message>
    <message>
        <source>Plates with the same mark, on the scale together. What is taken into a bar&apos;s stock is as many as were weighed.</source>
        <translation>Discos con la misma marca, juntos en la báscula. Al surtido de una barra pasan tantos como se pesaron.</translation>
    </message>
    <message>
        <source>With nothing but them on it, less the strap; once it hangs still.</source>
        <translation>Solo con ellos, menos la correa; cuando ya no se mueva.</translation>
    </message>
    <message>
        <source>What it weighs: not known yet</source>
        <translation>Lo que pesa: aún no se sabe</translation>
    </message>
    <message>
        <source>Nobody has checked this scale here: against a known mass it would be surer how far it is out.</source>
        <translation>Nadie ha comprobado esta báscula aquí: con una masa conocida se sabría mejor cuánto se desvía.</translation>
    </message>
    <message>
        <source>Several at once on the scale would be surer.</source>
        <translation>Varios a la vez en la báscula sería más fiable.</translation>
    </message>
    <message>
        <source>Plates, weighed</source>
        <translation>Discos ya pesados</translation>
    </message>
    <message>
        <source>Bar, weighed</source>
        <translation>Barra ya pesada</translation>
    </message>
    <message numerus="yes">
        <source>%n plates of %1</source>
        <translation>
            <numerusform>%n disco de %1</numerusform>
            <numerusform>%n discos de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Bar of %1</source>
        <translation>Barra de %1</translation>
    </message>
    <message>
        <source>One end</source>
        <translation>Un extremo</translation>
    </message>
    <message>
        <source>just off the ground</source>
        <translation>justo despegado del suelo</translation>
    </message>
    <message>
        <source>The other end</source>
        <translation>El otro extremo</translation>
    </message>
    <message>
        <source>where it has a mark at all</source>
        <translation>si es que lleva alguna marca</translation>
    </message>
    <message>
        <source>a bar, by its ends</source>
        <translation>una barra, por sus extremos</translation>
    </message>
    <message>
        <source>one end, then the other, where no scale holds it</source>
        <translation>un extremo y luego el otro, si ninguna báscula la aguanta</translation>
    </message>
    <message>
        <source>What does one end weigh?</source>
        <translation>¿Cuánto pesa un extremo?</translation>
    </message>
    <message>
        <source>And the other end?</source>
        <translation>¿Y el otro extremo?</translation>
    </message>
    <message>
        <source>Lift it a hand&apos;s breadth at the very end, the rope upright, the other end on the ground. The two add up, however its mass lies.</source>
        <translation>Levántala un palmo por el mismo extremo, la cuerda vertical, el otro extremo en el suelo. Las dos lecturas se suman, esté como esté repartida la masa.</translation>
    </message>
</context>
<context>
    <name>ItemEditor</name>
    <message>
        <source>No kept set-up pulls otherwise by it.</source>
        <translation>Con esto, ningún montaje guardado tira distinto.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>somebody taken out</source>
        <translation>una persona quitada</translation>
    </message>
    <message>
        <source>Kept set-ups that pull otherwise by it: %1.</source>
        <translation>Montajes guardados que con esto tiran distinto: %1.</translation>
    </message>
    <message>
        <source>no venue</source>
        <translation>ningún lugar</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>ni lo uno ni lo otro</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>due since %1</source>
        <translation>toca desde el %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>toca: %1</translation>
    </message>
    <message>
        <source>%1, the last %2</source>
        <translation>%1, la última %2</translation>
    </message>
</context>
<context>
    <name>ItemEnd</name>
    <message>
        <source>Compare it with</source>
        <translation>Comparar con</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>¿Cuántas?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>dos iguales</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Nombre, si le das uno</translation>
    </message>
    <message>
        <source>All numbers on one page</source>
        <translation>Todos los números en una página</translation>
    </message>
    <message>
        <source>Look it over: fit, or out of use</source>
        <translation>Revisar: apto o fuera de uso</translation>
    </message>
    <message>
        <source>Borrowed, or lent out</source>
        <translation>Tomado en préstamo, o prestado</translation>
    </message>
</context>
<context>
    <name>ItemFoot</name>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>cuando haya un cambio</translation>
    </message>
    <message>
        <source>once measured</source>
        <translation>cuando se mida</translation>
    </message>
</context>
<context>
    <name>ItemOriginPage</name>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde sale</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>There is no number yet: measure it first.</source>
        <translation>Aún no hay número: mide primero.</translation>
    </message>
    <message>
        <source>± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.</source>
        <translation>± vale para 19 de cada 20 veces; las partes que no tienen que ver entre sí se suman por sus cuadrados: JCGM 100:2008.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>ItemRecord</name>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>copied from a list: measure it here</source>
        <translation>copiado de una lista: medir aquí</translation>
    </message>
    <message>
        <source>%1 · look back, or put one right</source>
        <translation>%1 · mira atrás o corrige una</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Medir otra vez</translation>
    </message>
    <message>
        <source>Its number</source>
        <translation>Su número</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>de dónde sale</translation>
    </message>
    <message>
        <source>Borrowed, or lent out</source>
        <translation>Tomado en préstamo, o prestado</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>What it said at first stays in the vault&apos;s journal and can be read here.</source>
        <translation>Lo que decía al principio queda en el diario de la caja fuerte y se puede leer aquí.</translation>
    </message>
</context>
<context>
    <name>ItemRow</name>
    <message>
        <source>right %1</source>
        <translation>derecha %1</translation>
    </message>
    <message>
        <source>left %1, right %2</source>
        <translation>izquierda %1, derecha %2</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>izquierda %1</translation>
    </message>
</context>
<context>
    <name>ItemThrow</name>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Out of the kit</source>
        <translation>Fuera del material</translation>
    </message>
</context>
<context>
    <name>KeyedNumber</name>
    <message>
        <source>%1: nothing keyed yet</source>
        <translation>%1: nada tecleado aún</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>KeypadPage</name>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Hang %1</source>
        <translation>Colgar %1</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>IT IS RIGHT</source>
        <translation>ES CORRECTO</translation>
    </message>
</context>
<context>
    <name>KitComparison</name>
    <message>
        <source>They have no length in common to compare them at.</source>
        <translation>No tienen ninguna longitud en común para comparar.</translation>
    </message>
</context>
<context>
    <name>KitView</name>
    <message>
        <source>not measured yet</source>
        <translation>aún sin medir</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>pulls %1 at %2</source>
        <translation>tira %1 a %2</translation>
    </message>
    <message>
        <source>helps %1</source>
        <translation>ayuda %1</translation>
    </message>
    <message>
        <source>changes not kept</source>
        <translation>cambios sin guardar</translation>
    </message>
    <message>
        <source>lent</source>
        <translation>prestado</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>fuera de uso</translation>
    </message>
    <message>
        <source>a pair</source>
        <translation>un par</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>pertenece a %1</translation>
    </message>
    <message>
        <source>taken along to %1</source>
        <translation>llevado a %1</translation>
    </message>
</context>
<context>
    <name>LaneEditor</name>
    <message>
        <source>Lane</source>
        <translation>Carril</translation>
    </message>
    <message>
        <source>for carries and sleds, from mark to mark</source>
        <translation>para cargas y trineos, de marca a marca</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>LeadEditor</name>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>the bar&apos;s middle to the first link</source>
        <translation>del centro de la barra al primer eslabón</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>with its hooks; 0 when it is next to nothing</source>
        <translation>con sus ganchos; 0 si es casi nada</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Measure a lead strap</source>
        <translation>Medir una correa</translation>
    </message>
    <message>
        <source>What a chain hangs by decides where its first link leaves the floor. Look it over: a cut, a frayed stitch or a hook that does not close, and it is not measured but thrown away.</source>
        <translation>De lo que cuelga una cadena depende dónde deja el suelo su primer eslabón. Revisa la correa: con un corte, una puntada deshilachada o un gancho que no cierra no se mide, se desecha.</translation>
    </message>
    <message>
        <source>How long is it?</source>
        <translation>¿Cuánto mide?</translation>
    </message>
    <message>
        <source>What does it weigh?</source>
        <translation>¿Cuánto pesa?</translation>
    </message>
    <message>
        <source>Pulled straight as it will hang: from the bar&apos;s middle to where the first link sits.</source>
        <translation>Estirada recta, tal como va a colgar: del centro de la barra a donde se asienta el primer eslabón.</translation>
    </message>
    <message>
        <source>With its hooks. 0 when it is next to nothing.</source>
        <translation>Con sus ganchos. 0 si es casi nada.</translation>
    </message>
    <message>
        <source>Length and mass: not known yet</source>
        <translation>Longitud y masa: aún no se saben</translation>
    </message>
    <message>
        <source>Lead, %1</source>
        <translation>Correa, %1</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Correa</translation>
    </message>
</context>
<context>
    <name>LevelPicture</name>
    <message>
        <source>the pull</source>
        <translation>la tracción</translation>
    </message>
    <message>
        <source>what she can hold</source>
        <translation>lo que puede sostener</translation>
    </message>
    <message>
        <source>its share of that</source>
        <translation>su parte de eso</translation>
    </message>
    <message>
        <source>with plain iron</source>
        <translation>solo con hierro</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
</context>
<context>
    <name>LiftEditor</name>
    <message>
        <source>none of these</source>
        <translation>ninguno de estos</translation>
    </message>
</context>
<context>
    <name>LiftLine</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
</context>
<context>
    <name>LiftPage</name>
    <message>
        <source>A lift of your own</source>
        <translation>Un ejercicio tuyo</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Name of the lift</source>
        <translation>Nombre del ejercicio</translation>
    </message>
    <message>
        <source>as you call it; a bar moves along a path</source>
        <translation>como tú lo llames; una barra recorre una trayectoria</translation>
    </message>
    <message>
        <source>The lift starts</source>
        <translation>El ejercicio empieza</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>desde su marca de abajo</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>con los discos en el suelo</translation>
    </message>
    <message>
        <source>Most like</source>
        <translation>Se parece más a</translation>
    </message>
    <message>
        <source>Taken out, it leaves the list; bar marks and set-ups for it stay.</source>
        <translation>Al quitarlo sale de la lista; sus marcas de la barra y sus montajes se quedan.</translation>
    </message>
</context>
<context>
    <name>LiftStrengthPage</name>
    <message>
        <source>%1 · what counts today</source>
        <translation>%1 · lo que vale hoy</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>ADD A TEST</source>
        <translation>AÑADIR PRUEBA</translation>
    </message>
    <message>
        <source>A bar is the range of a day, its tick the middle, a disc a maximum that was tried out. A dashed line: other conditions.</source>
        <translation>Una barra es el intervalo de un día, su raya el centro, un disco un máximo probado. Línea discontinua: otras condiciones.</translation>
    </message>
    <message>
        <source>No test of this lift is kept yet.</source>
        <translation>Aún no hay ninguna prueba guardada de este ejercicio.</translation>
    </message>
</context>
<context>
    <name>LiftStrengthView</name>
    <message>
        <source>changes not kept</source>
        <translation>cambios sin guardar</translation>
    </message>
    <message>
        <source>by itself: %1</source>
        <translation>por sí sola: %1</translation>
    </message>
    <message>
        <source>nothing follows: %1</source>
        <translation>no se deduce nada: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no maximum</source>
        <translation>sin máximo</translation>
    </message>
    <message>
        <source>Other conditions below: not to be compared with those above.</source>
        <translation>Abajo, otras condiciones: no se comparan con las de arriba.</translation>
    </message>
    <message>
        <source>%1; older than your limit: test again</source>
        <translation>%1; más antiguo que tu límite: prueba de nuevo</translation>
    </message>
</context>
<context>
    <name>LiftsPage</name>
    <message>
        <source>bar marks of each lift</source>
        <translation>marcas de la barra de cada ejercicio</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>Add a lift</source>
        <translation>Añadir un ejercicio</translation>
    </message>
</context>
<context>
    <name>LiftsView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>arriba %1</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>measure again: the height has changed</source>
        <translation>medir otra vez: la estatura ha cambiado</translation>
    </message>
    <message>
        <source>measure again: may have grown</source>
        <translation>medir otra vez: puede haber crecido</translation>
    </message>
    <message>
        <source>%1 · looked over on %2</source>
        <translation>%1 · revisado el %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>tuyo</translation>
    </message>
    <message>
        <source>yours, like the %1</source>
        <translation>tuyo, como %1</translation>
    </message>
    <message>
        <source>%1 and %2 hung</source>
        <translation>%1 y %2 colgando</translation>
    </message>
</context>
<context>
    <name>LimitLine</name>
    <message>
        <source>As it was shipped</source>
        <translation>Como venía</translation>
    </message>
    <message>
        <source>%1: as it was shipped</source>
        <translation>%1: como venía</translation>
    </message>
</context>
<context>
    <name>LimitsEditor</name>
    <message>
        <source>yours; as it was shipped: %1</source>
        <translation>tuyo; venía con: %1</translation>
    </message>
    <message>
        <source>ours, as it was shipped</source>
        <translation>nuestro, como venía</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>LimitsPage</name>
    <message>
        <source>Your limits</source>
        <translation>Tus límites</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>for the whole vault</source>
        <translation>para toda la caja fuerte</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>cuando haya un cambio</translation>
    </message>
    <message>
        <source>Limits as they are shipped are ours, chosen on the careful side. Local rules, a maker&apos;s word and a federation&apos;s go before ours and yours.</source>
        <translation>Los límites que vienen son nuestros, elegidos con prudencia. Las normas locales y lo que digan un fabricante o una federación van antes que los nuestros y los tuyos.</translation>
    </message>
</context>
<context>
    <name>LoadStepper</name>
    <message>
        <source>Load on the bar</source>
        <translation>Carga en la barra</translation>
    </message>
</context>
<context>
    <name>LoanEditor</name>
    <message>
        <source>no day agreed</source>
        <translation>sin día acordado</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>in a week</source>
        <translation>en una semana</translation>
    </message>
    <message>
        <source>in 4 weeks</source>
        <translation>en 4 semanas</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>otro día</translation>
    </message>
    <message>
        <source>Back by %1.</source>
        <translation>Devolver el %1 a más tardar.</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Ese día no existe: mira el día y el mes.</translation>
    </message>
</context>
<context>
    <name>LoanPage</name>
    <message>
        <source>now: ours, and here</source>
        <translation>ahora: nuestro, y aquí</translation>
    </message>
    <message>
        <source>now: %1</source>
        <translation>ahora: %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>ours, and here</source>
        <translation>nuestro, y aquí</translation>
    </message>
    <message>
        <source>borrowed</source>
        <translation>tomado en préstamo</translation>
    </message>
    <message>
        <source>lent out</source>
        <translation>prestado</translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation>Quién lo tiene</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>De quién es</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>Plazo</translation>
    </message>
    <message>
        <source>While it is lent, it is not free to hang, and no set-up with it is ready. Its measurements stay.</source>
        <translation>Mientras está prestado no está libre para colgar, y ningún montaje que lo use está listo. Sus mediciones se quedan.</translation>
    </message>
    <message>
        <source>Kit lists say whose it is, and put it first in the week before it goes back. Measure it before you hang it: nobody else&apos;s number is its own.</source>
        <translation>Las listas de material dicen de quién es, y lo ponen primero en la semana antes de devolverlo. Mídelo antes de colgarlo: ningún número ajeno es el suyo.</translation>
    </message>
    <message>
        <source>It stands in its venue&apos;s list like the rest.</source>
        <translation>Está en la lista de su lugar como el resto.</translation>
    </message>
    <message>
        <source>it is back</source>
        <translation>ya está devuelto</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>cuando haya un cambio</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>cuando se diga quién</translation>
    </message>
</context>
<context>
    <name>MachineEditor</name>
    <message>
        <source>Stack</source>
        <translation>Pila de pesas</translation>
    </message>
    <message>
        <source>what is pinned while you pull</source>
        <translation>lo puesto con el pasador mientras tiras</translation>
    </message>
    <message>
        <source>what is pinned: turning moments are shown for it</source>
        <translation>lo puesto con el pasador: para eso se muestran los momentos de giro</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>how far the handle came</source>
        <translation>hasta dónde llegó la empuñadura</translation>
    </message>
    <message>
        <source>what the scale shows, held still</source>
        <translation>lo que muestra la báscula, quieta</translation>
    </message>
    <message>
        <source>turned from where it begins</source>
        <translation>giro desde donde empieza</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>square from the axis to the cable</source>
        <translation>a escuadra, del eje al cable</translation>
    </message>
    <message>
        <source>Pull along its way: not known yet</source>
        <translation>Tracción por su recorrido: aún no se sabe</translation>
    </message>
    <message>
        <source>Turning moment by angle: not known yet</source>
        <translation>Momento de giro por ángulo: aún no se sabe</translation>
    </message>
    <message>
        <source>Mean %1 over the way, work %2. Friction is left out: up it feels like more, down like less.</source>
        <translation>Media %1 en el recorrido, trabajo %2. La fricción se omite: al subir se siente más, al bajar menos.</translation>
    </message>
    <message>
        <source>Mean %1 over the way, work %2, the stack rises %3. Friction is left out: up it feels like more, down like less.</source>
        <translation>Media %1 en el recorrido, trabajo %2, la pila sube %3. La fricción se omite: al subir se siente más, al bajar menos.</translation>
    </message>
    <message>
        <source>N·m</source>
        <translation>N·m</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>medida hasta %1</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>recorrido</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tracción</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>radio</translation>
    </message>
    <message>
        <source>Cam machine</source>
        <translation>Máquina de leva</translation>
    </message>
</context>
<context>
    <name>MachineGuide</name>
    <message>
        <source>Measure a cam machine</source>
        <translation>Medir una máquina de leva</translation>
    </message>
    <message>
        <source>What is pinned on the stack?</source>
        <translation>¿Qué hay puesto con el pasador en la pila?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>¿De cuánto es su escalón?</translation>
    </message>
    <message>
        <source>How far is it turned?</source>
        <translation>¿Cuánto ha girado?</translation>
    </message>
    <message>
        <source>How far from axis to cable?</source>
        <translation>¿Cuánto hay del eje al cable?</translation>
    </message>
    <message>
        <source>How far did the handle come?</source>
        <translation>¿Hasta dónde llegó la empuñadura?</translation>
    </message>
    <message>
        <source>What does it pull there?</source>
        <translation>¿Cuánto tira ahí?</translation>
    </message>
    <message>
        <source>for all readings</source>
        <translation>para todas las lecturas</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>lectura %1</translation>
    </message>
    <message>
        <source>As it stays for every reading. A printed mass is taken as right within 2 %.</source>
        <translation>Tal como queda en todas las lecturas. Una masa impresa se da por buena dentro del 2 %.</translation>
    </message>
    <message>
        <source>Turning moments are shown for it, and it can be changed later. A printed mass is taken as right within 2 %.</source>
        <translation>Para eso se muestran los momentos de giro, y se puede cambiar después. Una masa impresa se da por buena dentro del 2 %.</translation>
    </message>
    <message>
        <source>From the start of the movement, in degrees; a level on the lever shows it.</source>
        <translation>Desde el inicio del movimiento, en grados; un nivel sobre la palanca lo muestra.</translation>
    </message>
    <message>
        <source>Square from the middle of the axis to the cable, where it leaves the cam. Nobody moves the lever meanwhile.</source>
        <translation>A escuadra, del centro del eje al cable, donde sale de la leva. Mientras tanto, nadie mueve la palanca.</translation>
    </message>
    <message>
        <source>Along the way of the handle, from the start of the movement.</source>
        <translation>Por el recorrido de la empuñadura, desde el inicio del movimiento.</translation>
    </message>
    <message>
        <source>The scale between hand and handle, held still, straight along the way.</source>
        <translation>La báscula entre la mano y la empuñadura, quieta, recta en la dirección del recorrido.</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>Begin at the start</source>
        <translation>Empieza en el inicio</translation>
    </message>
    <message>
        <source>The first and the last reading say between what ends it is known.</source>
        <translation>La primera lectura y la última dicen entre qué extremos se conoce.</translation>
    </message>
    <message>
        <source>Go to the end</source>
        <translation>Ve hasta el final</translation>
    </message>
    <message>
        <source>Past the last reading nothing is known.</source>
        <translation>Más allá de la última lectura no se sabe nada.</translation>
    </message>
    <message>
        <source>Go for about %1</source>
        <translation>Busca alrededor de %1</translation>
    </message>
    <message>
        <source>There the readings are furthest apart.</source>
        <translation>Ahí es donde más separadas están las lecturas.</translation>
    </message>
    <message>
        <source>Enough readings.</source>
        <translation>Lecturas suficientes.</translation>
    </message>
    <message>
        <source>One more at about %1 would make it surer.</source>
        <translation>Una más, alrededor de %1, la haría más fiable.</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Measure a cam machine</source>
        <translation>Medir una máquina de leva</translation>
    </message>
    <message>
        <source>pull it on a scale along its way</source>
        <translation>tira con una báscula por su recorrido</translation>
    </message>
    <message>
        <source>turn it, read axis to cable</source>
        <translation>gírala, lee del eje al cable</translation>
    </message>
    <message>
        <source>Reading %1, travel: %2</source>
        <translation>Lectura %1, recorrido: %2</translation>
    </message>
    <message>
        <source>Reading %1, angle: %2</source>
        <translation>Lectura %1, ángulo: %2</translation>
    </message>
    <message>
        <source>Reading %1, pull: %2</source>
        <translation>Lectura %1, tracción: %2</translation>
    </message>
    <message>
        <source>Reading %1, radius: %2</source>
        <translation>Lectura %1, radio: %2</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>by radius</source>
        <translation>por radio</translation>
    </message>
    <message>
        <source>by pull</source>
        <translation>por tracción</translation>
    </message>
</context>
<context>
    <name>MachineStepsPage</name>
    <message>
        <source>A cam changes what the stack feels like along the way. Fingers out of cam, cable and stack; the pin is in to the stop before anybody lets go.</source>
        <translation>Una leva cambia cómo se siente la pila a lo largo del recorrido. Dedos fuera de leva, cable y pila; el pasador, metido hasta el tope antes de que nadie suelte.</translation>
    </message>
    <message>
        <source>By its radius</source>
        <translation>Por su radio</translation>
    </message>
    <message>
        <source>ruler and level: turning moment by angle</source>
        <translation>regla y nivel: momento de giro por ángulo</translation>
    </message>
    <message>
        <source>By its pull</source>
        <translation>Por su tracción</translation>
    </message>
    <message>
        <source>hanging scale and tape: pull by travel</source>
        <translation>báscula colgante y cinta métrica: tracción por recorrido</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Steelyard</source>
        <translation>Steelyard</translation>
    </message>
</context>
<context>
    <name>ManyRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
</context>
<context>
    <name>MarksEditor</name>
    <message>
        <source>Blocks under the plates</source>
        <translation>Bloques bajo los discos</translation>
    </message>
    <message>
        <source>none, or their height</source>
        <translation>ninguno, o su altura</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle, at the sleeve</source>
        <translation>del suelo al centro de la barra, en la manga</translation>
    </message>
    <message>
        <source>Sticking zone from</source>
        <translation>Zona de estancamiento desde</translation>
    </message>
    <message>
        <source>her own, or leave it out</source>
        <translation>la suya, u omítela</translation>
    </message>
    <message>
        <source>Sticking zone to</source>
        <translation>Zona de estancamiento hasta</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>standing tall, or arms straight</source>
        <translation>de pie del todo, o brazos estirados</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Rack</translation>
    </message>
    <message>
        <source>where she takes the bar; may be left out</source>
        <translation>donde toma la barra; se puede omitir</translation>
    </message>
    <message>
        <source>by tape, no hole</source>
        <translation>con cinta métrica, sin agujero</translation>
    </message>
    <message>
        <source>%1, hole</source>
        <translation>%1, agujero</translation>
    </message>
    <message>
        <source>There is no such mark.</source>
        <translation>Esa marca no existe.</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n holes, and the lowest is 1.</source>
        <translation>
            <numerusform>%1 tiene %n agujero, y el más bajo es el 1.</numerusform>
            <numerusform>%1 tiene %n agujeros, y el más bajo es el 1.</numerusform>
        </translation>
    </message>
    <message>
        <source>hole of %1</source>
        <translation>agujero de %1</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>cinta</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>zone from</source>
        <translation>zona desde</translation>
    </message>
    <message>
        <source>zone to</source>
        <translation>zona hasta</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>apoyo</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
</context>
<context>
    <name>MarksPage</name>
    <message>
        <source>Her bar marks</source>
        <translation>Sus marcas de la barra</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle, read at the sleeve</source>
        <translation>del suelo al centro de la barra, leído en la manga</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Guardarlas</translation>
    </message>
    <message>
        <source>SEE</source>
        <translation>VER</translation>
    </message>
    <message>
        <source>what she lifts</source>
        <translation>lo que levanta</translation>
    </message>
    <message>
        <source>Read them one by one</source>
        <translation>Leerlas una a una</translation>
    </message>
    <message>
        <source>bottom and top</source>
        <translation>abajo y arriba</translation>
    </message>
    <message>
        <source>The lift starts</source>
        <translation>El ejercicio empieza</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>desde su marca de abajo</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>con los discos en el suelo</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Leer por</translation>
    </message>
</context>
<context>
    <name>MarksRun</name>
    <message>
        <source>kept</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>%1 · %2 of %3</source>
        <translation>%1 · %2 de %3</translation>
    </message>
    <message>
        <source>Copied from %1 to %2: measure it there when there is time.</source>
        <translation>Copiado de %1 a %2: mídelo allí cuando haya tiempo.</translation>
    </message>
</context>
<context>
    <name>MarksRunPage</name>
    <message>
        <source>Lifts</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>No zone</source>
        <translation>Sin zona</translation>
    </message>
    <message>
        <source>Zone too</source>
        <translation>Zona también</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>SIGUIENTE</translation>
    </message>
    <message>
        <source>DONE</source>
        <translation>HECHO</translation>
    </message>
    <message>
        <source>Go back and read it again.</source>
        <translation>Vuelve atrás y lee otra vez.</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Leer por</translation>
    </message>
    <message>
        <source>The same marks for another lift too</source>
        <translation>Las mismas marcas también para otro ejercicio</translation>
    </message>
</context>
<context>
    <name>MeasureWhat</name>
    <message>
        <source>begun, not kept</source>
        <translation>empezado, sin guardar</translation>
    </message>
    <message>
        <source>A chain</source>
        <translation>Una cadena</translation>
    </message>
    <message>
        <source>a minute: a scale and a tape, or a tape and one link</source>
        <translation>un minuto: una báscula y una cinta métrica, o la cinta y un eslabón</translation>
    </message>
    <message>
        <source>A band</source>
        <translation>Una banda</translation>
    </message>
    <message>
        <source>four minutes: plates, somewhere to hang it, a tape</source>
        <translation>cuatro minutos: discos, dónde colgarla, una cinta métrica</translation>
    </message>
    <message>
        <source>A bench aid</source>
        <translation>Una ayuda de banca</translation>
    </message>
    <message>
        <source>five minutes: the lifter, a bar, plates, a tape</source>
        <translation>cinco minutos: quien levanta, una barra, discos, una cinta métrica</translation>
    </message>
    <message>
        <source>A cam machine</source>
        <translation>Una máquina de leva</translation>
    </message>
    <message>
        <source>five minutes: a ruler and a level, or a hanging scale</source>
        <translation>cinco minutos: una regla y un nivel, o una báscula colgante</translation>
    </message>
    <message>
        <source>A hanging scale</source>
        <translation>Una báscula colgante</translation>
    </message>
    <message>
        <source>two minutes: something of known mass</source>
        <translation>dos minutos: algo de masa conocida</translation>
    </message>
    <message>
        <source>A bar or plates</source>
        <translation>Una barra o discos</translation>
    </message>
    <message>
        <source>a minute: a scale that holds them</source>
        <translation>un minuto: una báscula que los aguante</translation>
    </message>
    <message>
        <source>A lead strap</source>
        <translation>Una correa</translation>
    </message>
    <message>
        <source>a minute: a tape and a scale</source>
        <translation>un minuto: una cinta métrica y una báscula</translation>
    </message>
    <message>
        <source>A rack</source>
        <translation>Un rack</translation>
    </message>
    <message>
        <source>two minutes: a tape</source>
        <translation>dos minutos: una cinta métrica</translation>
    </message>
    <message>
        <source>A tyre</source>
        <translation>Una rueda</translation>
    </message>
    <message>
        <source>a minute: a hanging scale and a tape</source>
        <translation>un minuto: una báscula colgante y una cinta métrica</translation>
    </message>
    <message>
        <source>A log</source>
        <translation>Un tronco</translation>
    </message>
    <message>
        <source>a minute: a hanging scale</source>
        <translation>un minuto: una báscula colgante</translation>
    </message>
    <message>
        <source>A stone</source>
        <translation>Una piedra</translation>
    </message>
    <message>
        <source>a minute: a scale, or a tape</source>
        <translation>un minuto: una báscula, o una cinta métrica</translation>
    </message>
    <message>
        <source>A keg or sandbag</source>
        <translation>Un barril o saco de arena</translation>
    </message>
    <message>
        <source>a minute: a scale, or how much is in it</source>
        <translation>un minuto: una báscula, o cuánto contiene</translation>
    </message>
    <message>
        <source>A sled</source>
        <translation>Un trineo</translation>
    </message>
    <message>
        <source>a minute: a scale and a tape</source>
        <translation>un minuto: una báscula y una cinta métrica</translation>
    </message>
    <message>
        <source>Handles, a yoke or a frame</source>
        <translation>Asas, un yugo o un marco</translation>
    </message>
    <message>
        <source>a minute: a scale, or its mark</source>
        <translation>un minuto: una báscula, o su marca</translation>
    </message>
    <message>
        <source>A kettlebell or dumbbell</source>
        <translation>Una pesa rusa o mancuerna</translation>
    </message>
    <message>
        <source>a minute: a scale, or its mark; a hand to try it</source>
        <translation>un minuto: una báscula, o su marca; una mano para probarla</translation>
    </message>
</context>
<context>
    <name>MeasureWhatPage</name>
    <message>
        <source>Measure new kit</source>
        <translation>Medir material nuevo</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
</context>
<context>
    <name>MeasurementsPage</name>
    <message>
        <source>measured; tap one to put it right</source>
        <translation>medido; toca una para corregirla</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
</context>
<context>
    <name>MeasurementsView</name>
    <message>
        <source>this one counts</source>
        <translation>esta cuenta</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>NewsPage</name>
    <message>
        <source>Before you go on</source>
        <translation>Antes de seguir</translation>
    </message>
    <message>
        <source>I HAVE READ IT</source>
        <translation>LO HE LEÍDO</translation>
    </message>
</context>
<context>
    <name>NumberKeys</name>
    <message>
        <source>decimal point</source>
        <translation>separador decimal</translation>
    </message>
    <message>
        <source>rub out</source>
        <translation>borrar</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Load on the bar</source>
        <translation>Carga en la barra</translation>
    </message>
    <message>
        <source>A pair of plates, each</source>
        <translation>Un par de discos, cada uno</translation>
    </message>
    <message>
        <source>Hanging %1: mass</source>
        <translation>Colgada %1: masa</translation>
    </message>
    <message>
        <source>Hanging %1: length</source>
        <translation>Colgada %1: longitud</translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation>ahora %1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>ahora %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 at least</source>
        <translation>%1 como mínimo</translation>
    </message>
    <message>
        <source>%1 at most</source>
        <translation>%1 como máximo</translation>
    </message>
    <message>
        <source>once keyed</source>
        <translation>cuando se teclee</translation>
    </message>
    <message>
        <source>%1? Last time it was %2.</source>
        <translation>¿%1? La última vez fueron %2.</translation>
    </message>
    <message>
        <source>%1? Last time it was %2. Pounds for kilograms?</source>
        <translation>¿%1? La última vez fueron %2. ¿Libras en vez de kilogramos?</translation>
    </message>
    <message>
        <source>%1? Last time it was %2. Look at the noughts and the point.</source>
        <translation>¿%1? La última vez fueron %2. Mira los ceros y los decimales.</translation>
    </message>
</context>
<context>
    <name>OddHanging</name>
    <message>
        <source>Read it again</source>
        <translation>Leer otra vez</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Omitir</translation>
    </message>
</context>
<context>
    <name>OriginPage</name>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde sale</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Which number</source>
        <translation>Qué número</translation>
    </message>
    <message>
        <source>There is no number yet: enter her bar marks, and hang what was measured far enough.</source>
        <translation>Aún no hay número: anota sus marcas de la barra y cuelga algo medido hasta donde hace falta.</translation>
    </message>
    <message>
        <source>The parts add up to the number. ± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.</source>
        <translation>Las partes suman el número. ± vale para 19 de cada 20 veces; las partes que no tienen que ver entre sí se suman por sus cuadrados: JCGM 100:2008.</translation>
    </message>
</context>
<context>
    <name>OriginView</name>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % de lo que lo hace incierto</translation>
    </message>
</context>
<context>
    <name>PageStack</name>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
</context>
<context>
    <name>PassphrasePage</name>
    <message>
        <source>Five words</source>
        <translation>Cinco palabras</translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation>Tu frase de acceso</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Otras</translation>
    </message>
    <message>
        <source>Draw five other words</source>
        <translation>Sortear otras cinco palabras</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>SIGUIENTE</translation>
    </message>
    <message>
        <source>recovery code</source>
        <translation>código de rescate</translation>
    </message>
    <message>
        <source>Five words, to be read by eye</source>
        <translation>Cinco palabras, para leer con la vista</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de acceso</translation>
    </message>
    <message numerus="yes">
        <source>%n characters or more; a sentence is easiest</source>
        <translation>
            <numerusform>%n carácter o más; lo más fácil es una frase</numerusform>
            <numerusform>%n caracteres o más; lo más fácil es una frase</numerusform>
        </translation>
    </message>
    <message>
        <source>Type them, with a space between</source>
        <translation>Escríbelas, con un espacio en medio</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Lo mismo otra vez</translation>
    </message>
</context>
<context>
    <name>PickPage</name>
    <message>
        <source>Clearance</source>
        <translation>Autorización</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
</context>
<context>
    <name>PlacesBar</name>
    <message>
        <source>Places</source>
        <translation>Secciones</translation>
    </message>
    <message>
        <source>you are here</source>
        <translation>estás aquí</translation>
    </message>
</context>
<context>
    <name>Preferences</name>
    <message>
        <source>as the device</source>
        <translation>como el dispositivo</translation>
    </message>
</context>
<context>
    <name>PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>units belong to the vault, the rest to this device</source>
        <translation>las unidades son de la caja fuerte; lo demás, de este dispositivo</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Remove the example</source>
        <translation>Quitar el ejemplo</translation>
    </message>
    <message>
        <source>Masses and pulls in</source>
        <translation>Masas y tracciones en</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>Heights and lengths in</source>
        <translation>Alturas y longitudes en</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>What was typed stays as it was typed, and plates keep their marks.</source>
        <translation>Lo escrito queda como se escribió, y los discos conservan sus marcas.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>for the sun</source>
        <translation>para el sol</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>mayor</translation>
    </message>
    <message>
        <source>large</source>
        <translation>grande</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>Thumb, with the phone on its side</source>
        <translation>Pulgar, con el teléfono de lado</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Keys that answer a lift</source>
        <translation>Teclas para responder a un levantamiento</translation>
    </message>
    <message>
        <source>big, for gloves</source>
        <translation>grandes, para guantes</translation>
    </message>
    <message>
        <source>Display, while the vault is open</source>
        <translation>Pantalla, con la caja fuerte abierta</translation>
    </message>
    <message>
        <source>stays on</source>
        <translation>sigue encendida</translation>
    </message>
    <message>
        <source>as the device</source>
        <translation>como el dispositivo</translation>
    </message>
    <message>
        <source>Your limits</source>
        <translation>Tus límites</translation>
    </message>
    <message>
        <source>tyre, way down, anchors, how long a measurement counts</source>
        <translation>rueda, bajada, anclajes, cuánto vale una medición</translation>
    </message>
    <message>
        <source>as shipped</source>
        <translation>como venían</translation>
    </message>
    <message numerus="yes">
        <source>%n of your own</source>
        <translation>
            <numerusform>%n propio</numerusform>
            <numerusform>%n propios</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PullsEditor</name>
    <message>
        <source>Height of the bar</source>
        <translation>Altura de la barra</translation>
    </message>
    <message>
        <source>its middle above the floor, held still by the rack</source>
        <translation>su centro sobre el suelo, sujeta por el rack</translation>
    </message>
    <message>
        <source>Greatest pull</source>
        <translation>Tracción máxima</translation>
    </message>
    <message>
        <source>what the scale showed, the bar&apos;s weight among it</source>
        <translation>lo que marcó la báscula, con el peso de la barra incluido</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>the smallest difference that it shows</source>
        <translation>la menor diferencia que muestra</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>PullsPage</name>
    <message>
        <source>What she can hold</source>
        <translation>Lo que puede sostener</translation>
    </message>
    <message>
        <source>KEEP THIS PULL</source>
        <translation>GUARDAR ESTA TRACCIÓN</translation>
    </message>
    <message>
        <source>She pulls as hard as she can on a bar that the rack holds, at three heights at least, from near her lowest to near her highest; a scale or a plate shows how hard.</source>
        <translation>Tira tan fuerte como puede de una barra que el rack sujeta, al menos a tres alturas, desde cerca de la más baja hasta cerca de la más alta; una báscula o una plataforma muestra cuánto.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>A greatest pull is a maximal test</source>
        <translation>Una tracción máxima es una prueba máxima</translation>
    </message>
    <message>
        <source>Warm, cleared for it and supervised; the rack bolted or loaded so that it cannot move, and the bar under pins, never on hooks alone. Build the pull up over a second, without a jerk. Stop for pain, dizziness, chest pain, sudden headache or numbness. Under 18 only with a named approval. Your local rules come first.</source>
        <translation>Con calentamiento, autorización y supervisión; el rack atornillado o cargado para que no se mueva, y la barra bajo pasadores, nunca solo en ganchos. Sube la tracción durante un segundo, sin tirones. Para ante dolor, mareo, dolor de pecho, dolor de cabeza repentino o entumecimiento. Menores de 18 años, solo con una autorización con nombre. Las normas locales van primero.</translation>
    </message>
    <message>
        <source>The desk is laid out for nobody: these pulls go with the marks. Choose an athlete and a lift to keep them.</source>
        <translation>Esto no está preparado para nadie: estas tracciones se van con las marcas. Elige atleta y ejercicio para guardarlas.</translation>
    </message>
    <message>
        <source>Pulls count together for 28 days; an older one is another strength. One pull is taken to spread by 5 % until three are repeats.</source>
        <translation>Las tracciones cuentan juntas durante 28 días; una anterior es otra fuerza. Se supone que una varía un 5 % hasta que haya tres repeticiones.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Se quiere</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RackEditor</name>
    <message>
        <source>Lowest hole</source>
        <translation>Agujero más bajo</translation>
    </message>
    <message>
        <source>floor to the middle of a bar that lies there</source>
        <translation>del suelo al centro de una barra apoyada ahí</translation>
    </message>
    <message>
        <source>Hole to hole</source>
        <translation>De agujero a agujero</translation>
    </message>
    <message>
        <source>middle to middle</source>
        <translation>de centro a centro</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Agujeros</translation>
    </message>
    <message>
        <source>from the lowest to the highest that is used</source>
        <translation>del más bajo al más alto que se usa</translation>
    </message>
    <message>
        <source>holes</source>
        <translation>agujeros</translation>
    </message>
    <message>
        <source>Bands, place %1</source>
        <translation>Bandas, punto %1</translation>
    </message>
    <message>
        <source>floor to where a band holds</source>
        <translation>del suelo a donde agarra una banda</translation>
    </message>
    <message>
        <source>floor to where a band holds; may be left out</source>
        <translation>del suelo a donde agarra una banda; se puede omitir</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Measure a rack</source>
        <translation>Medir un rack</translation>
    </message>
    <message>
        <source>With its holes known, a bar mark is a hole&apos;s number, and bands find their anchor. Measure at the rack as it stands, with the bar in it.</source>
        <translation>Con sus agujeros conocidos, una marca de la barra es el número de un agujero, y las bandas encuentran su anclaje. Mide en el rack tal como está, con la barra puesta.</translation>
    </message>
    <message>
        <source>It has</source>
        <translation>Tiene</translation>
    </message>
    <message>
        <source>holes for the bar</source>
        <translation>agujeros para la barra</translation>
    </message>
    <message>
        <source>places for bands only</source>
        <translation>puntos solo para bandas</translation>
    </message>
    <message>
        <source>lowest, distance, how many</source>
        <translation>el más bajo, distancia, cuántos</translation>
    </message>
    <message>
        <source>hooks, pegs, a beam</source>
        <translation>ganchos, clavijas, una viga</translation>
    </message>
    <message>
        <source>Add a place for bands</source>
        <translation>Añadir un punto para bandas</translation>
    </message>
    <message>
        <source>How high is the lowest hole?</source>
        <translation>¿A qué altura está el agujero más bajo?</translation>
    </message>
    <message>
        <source>How far from hole to hole?</source>
        <translation>¿Cuánto hay de agujero a agujero?</translation>
    </message>
    <message>
        <source>How many holes?</source>
        <translation>¿Cuántos agujeros?</translation>
    </message>
    <message>
        <source>How high can a band be anchored?</source>
        <translation>¿A qué altura se puede anclar una banda?</translation>
    </message>
    <message>
        <source>Floor to the middle of a bar that lies in its hook there, read at the sleeve.</source>
        <translation>Del suelo al centro de una barra apoyada ahí en su gancho, leído en la manga.</translation>
    </message>
    <message>
        <source>Middle to middle. Over ten of them, divided by ten, it is surer.</source>
        <translation>De centro a centro. Medido sobre diez y dividido entre diez es más fiable.</translation>
    </message>
    <message>
        <source>From the lowest, which is number 1, to the highest that is used.</source>
        <translation>Del más bajo, que es el número 1, al más alto que se usa.</translation>
    </message>
    <message>
        <source>Floor to where the band will hold. It has to hold more than the band pulls.</source>
        <translation>Del suelo a donde agarrará la banda. Tiene que aguantar más de lo que tira la banda.</translation>
    </message>
    <message>
        <source>Its heights: not known yet</source>
        <translation>Sus alturas: aún no se saben</translation>
    </message>
    <message>
        <source>A mark read at a hole counts as good to a centimetre, as by tape (our choice).</source>
        <translation>Una marca leída en un agujero se da por buena al centímetro, como con cinta métrica (decisión nuestra).</translation>
    </message>
    <message>
        <source>Places where bands can be anchored may be added.</source>
        <translation>Se pueden añadir puntos donde anclar bandas.</translation>
    </message>
    <message numerus="yes">
        <source>Rack, %n holes</source>
        <translation>
            <numerusform>Rack, %n agujero</numerusform>
            <numerusform>Rack, %n agujeros</numerusform>
        </translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Rack</translation>
    </message>
</context>
<context>
    <name>RampPage</name>
    <message>
        <source>Warm-up</source>
        <translation>Calenta­miento</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>%1, the working set</source>
        <translation>%1, la serie de trabajo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Share of the working pull</source>
        <translation>Parte de la tracción de trabajo</translation>
    </message>
    <message>
        <source>Leave the shares so</source>
        <translation>Dejar las partes así</translation>
    </message>
    <message>
        <source>Change the shares</source>
        <translation>Cambiar las partes</translation>
    </message>
    <message>
        <source>Shares of the pull</source>
        <translation>Partes de la tracción</translation>
    </message>
    <message>
        <source>Change plates with what hangs at rest</source>
        <translation>Cambia los discos con todo en reposo</translation>
    </message>
    <message>
        <source>Take the pull off bands before a plate comes off, and never strip plates with bands from above on. Chains stay even on both sides, feet clear of them.</source>
        <translation>Quita la tensión de las bandas antes de sacar un disco y nunca descargues discos con bandas desde arriba. Las cadenas, iguales en los dos lados y los pies lejos de ellas.</translation>
    </message>
    <message>
        <source>The shares are ours, and common practice: step them as you know her.</source>
        <translation>Las partes son elección nuestra y práctica habitual: ajústalas según la conozcas.</translation>
    </message>
</context>
<context>
    <name>RampView</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>pulls %1</source>
        <translation>tira %1</translation>
    </message>
    <message>
        <source>as light as it gets: what hangs pulls more than that alone</source>
        <translation>no puede ser más ligero: lo que cuelga ya tira más por sí solo</translation>
    </message>
    <message>
        <source>nothing here makes a load between: the same as before</source>
        <translation>aquí no sale una carga intermedia: la misma que antes</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100 %</translation>
    </message>
    <message>
        <source>Up to %1 %2</source>
        <translation>Hasta %1 %2</translation>
    </message>
    <message>
        <source>The least that can be hung with it: %1 of iron, which pulls %2.</source>
        <translation>Lo mínimo que se puede colgar con ello: %1 de hierro, que tira %2.</translation>
    </message>
    <message>
        <source>The pull of what hangs is not known: measure further first.</source>
        <translation>No se conoce la tracción de lo que cuelga: primero mide más.</translation>
    </message>
</context>
<context>
    <name>ReadOut</name>
    <message>
        <source>%1, filled in</source>
        <translation>%1, rellenado</translation>
    </message>
    <message>
        <source>%1, kept</source>
        <translation>%1, guardado</translation>
    </message>
</context>
<context>
    <name>ReadingSteps</name>
    <message>
        <source>That is enough</source>
        <translation>Con eso basta</translation>
    </message>
    <message>
        <source>One more reading</source>
        <translation>Una lectura más</translation>
    </message>
</context>
<context>
    <name>ReadingsEditor</name>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
</context>
<context>
    <name>ReadingsGuide</name>
    <message>
        <source>first look it over</source>
        <translation>primero, revísala</translation>
    </message>
    <message>
        <source>readings: %1</source>
        <translation>lecturas: %1</translation>
    </message>
    <message>
        <source>Good enough as it is</source>
        <translation>Así es suficiente</translation>
    </message>
</context>
<context>
    <name>ReadingsSheet</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>One more reading</source>
        <translation>Una lectura más</translation>
    </message>
    <message>
        <source>Read it again, or leave it out.</source>
        <translation>Léela otra vez u omítela.</translation>
    </message>
    <message>
        <source>Take in again: reading %1</source>
        <translation>Volver a incluir: lectura %1</translation>
    </message>
    <message>
        <source>Leave reading %1 out</source>
        <translation>Omitir la lectura %1</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Nombre, si le das uno</translation>
    </message>
</context>
<context>
    <name>ReleaseForm</name>
    <message>
        <source>Partner&apos;s push</source>
        <translation>Empuje del compañero</translation>
    </message>
    <message>
        <source>read on a scale; leave out when it never was</source>
        <translation>leído en una báscula; déjalo si nunca se leyó</translation>
    </message>
    <message>
        <source>One dumbbell</source>
        <translation>Una mancuerna</translation>
    </message>
    <message>
        <source>of the two that are dropped</source>
        <translation>de las dos que se sueltan</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>in one set</source>
        <translation>en una serie</translation>
    </message>
    <message>
        <source>Way down, s</source>
        <translation>Bajada, s</translation>
    </message>
    <message>
        <source>seconds from top to bottom</source>
        <translation>segundos de arriba abajo</translation>
    </message>
    <message>
        <source>Reps of a cluster</source>
        <translation>Repeticiones de un grupo</translation>
    </message>
    <message>
        <source>between two rests in the set</source>
        <translation>entre dos pausas de la serie</translation>
    </message>
    <message>
        <source>Rest in the set, s</source>
        <translation>Pausa en la serie, s</translation>
    </message>
    <message>
        <source>seconds, while it is put back</source>
        <translation>segundos, mientras se vuelve a poner</translation>
    </message>
    <message>
        <source>One hook weighs</source>
        <translation>Un gancho pesa</translation>
    </message>
    <message>
        <source>empty; the other one is like it</source>
        <translation>vacío; el otro es igual</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>the smallest difference that it shows</source>
        <translation>la menor diferencia que muestra</translation>
    </message>
    <message>
        <source>Bar&apos;s centre to the seat</source>
        <translation>Del centro de la barra al asiento</translation>
    </message>
    <message>
        <source>half of the sleeve&apos;s thickness</source>
        <translation>la mitad del grosor de la manga</translation>
    </message>
    <message>
        <source>Drop until the lip is clear</source>
        <translation>Baja hasta que el labio queda libre</translation>
    </message>
    <message>
        <source>tried with an empty bar, the hook&apos;s foot on the floor</source>
        <translation>probado con la barra vacía, el pie del gancho en el suelo</translation>
    </message>
    <message>
        <source>One hook carries</source>
        <translation>Un gancho lleva</translation>
    </message>
    <message>
        <source>what is written on it, its frame apart</source>
        <translation>lo que pone en él, aparte de su armazón</translation>
    </message>
    <message>
        <source>Room for plates</source>
        <translation>Sitio para discos</translation>
    </message>
    <message>
        <source>on one hook</source>
        <translation>en un gancho</translation>
    </message>
    <message>
        <source>Another setting</source>
        <translation>Otro ajuste</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>Ajuste %1</translation>
    </message>
    <message>
        <source>seat to foot</source>
        <translation>de asiento a pie</translation>
    </message>
    <message>
        <source>Rep %1, lowest bar</source>
        <translation>Repetición %1, barra más baja</translation>
    </message>
    <message>
        <source>bar&apos;s centre above the floor, plain bar</source>
        <translation>centro de la barra sobre el suelo, barra sola</translation>
    </message>
    <message>
        <source>Or on a box</source>
        <translation>O sobre un cajón</translation>
    </message>
    <message>
        <source>bar&apos;s centre above the floor, the same each time</source>
        <translation>centro de la barra sobre el suelo, siempre igual</translation>
    </message>
    <message>
        <source>Free above that by</source>
        <translation>Libre por encima en</translation>
    </message>
    <message>
        <source>on a box yours to say</source>
        <translation>sobre un cajón lo dices tú</translation>
    </message>
    <message>
        <source>left out, twice her own spread</source>
        <translation>si falta, el doble de su variación</translation>
    </message>
    <message>
        <source>From side to side</source>
        <translation>De lado a lado</translation>
    </message>
    <message>
        <source>from hook to hook, or from plates to plates</source>
        <translation>de gancho a gancho, o de discos a discos</translation>
    </message>
    <message>
        <source>From hand to hand</source>
        <translation>De mano a mano</translation>
    </message>
    <message>
        <source>where hands hold the bar; leave out in a squat</source>
        <translation>donde las manos sujetan la barra; en la sentadilla, déjalo</translation>
    </message>
    <message>
        <source>Arched chest</source>
        <translation>Pecho arqueado</translation>
    </message>
    <message>
        <source>floor to its top, lying as she will lie</source>
        <translation>del suelo a su parte alta, tumbada como va a estar</translation>
    </message>
    <message>
        <source>Throat</source>
        <translation>Garganta</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>ReleasePlanner</name>
    <message>
        <source>On the way up</source>
        <translation>Al subir</translation>
    </message>
    <message>
        <source>bar, collars and plates</source>
        <translation>barra, cierres y discos</translation>
    </message>
    <message>
        <source>On the way down</source>
        <translation>En la bajada</translation>
    </message>
    <message>
        <source>with all that is let go</source>
        <translation>con todo lo que se suelta</translation>
    </message>
    <message>
        <source>per cent of her 1RM</source>
        <translation>por ciento de su 1RM</translation>
    </message>
    <message>
        <source>per cent of the way up</source>
        <translation>por ciento de la subida</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
    <message>
        <source>Do not lift this</source>
        <translation>No levantes esto</translation>
    </message>
    <message>
        <source>Not ready: something is still to measure</source>
        <translation>No está listo: falta algo por medir</translation>
    </message>
    <message>
        <source>Not ready: for nobody yet, so nobody&apos;s clearance can be looked up</source>
        <translation>No está listo: aún no es de nadie, así que no hay autorización que mirar</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Look the cautions over first</source>
        <translation>Revisa primero los avisos</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Not ready: hang this bar first</source>
        <translation>No está listo: cuelga primero esta barra</translation>
    </message>
    <message>
        <source>Not ready: see the set-up</source>
        <translation>No está listo: mira el montaje</translation>
    </message>
</context>
<context>
    <name>RemoveSamplePage</name>
    <message>
        <source>Remove the example?</source>
        <translation>¿Quitar el ejemplo?</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>Remove the example</source>
        <translation>Quitar el ejemplo</translation>
    </message>
    <message>
        <source>The invented people of Marrow Hill leave this device, with all that was tried out on them. This cannot be undone.</source>
        <translation>Las personas inventadas de Marrow Hill salen de este dispositivo, con todo lo que se probó con ellas. Esto no se puede deshacer.</translation>
    </message>
    <message>
        <source>A vault of your own is another one, and stays as it is. The app then starts as new.</source>
        <translation>Si tienes una caja fuerte propia, es otra y queda como está. Después la app empieza como nueva.</translation>
    </message>
</context>
<context>
    <name>RetypePage</name>
    <message>
        <source>From your paper</source>
        <translation>De tu papel</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>MAKE THE VAULT</source>
        <translation>CREAR LA CAJA FUERTE</translation>
    </message>
    <message>
        <source>Recovery code; hyphens and capitals do not matter</source>
        <translation>Código de rescate; guiones y mayúsculas dan igual</translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>To be settled</source>
        <translation>Por resolver</translation>
    </message>
    <message>
        <source>tap what is right</source>
        <translation>toca lo correcto</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Nothing waits here. When two devices say different things about the same, both stand here until you choose.</source>
        <translation>Aquí no espera nada. Cuando dos dispositivos dicen cosas distintas sobre lo mismo, ambas quedan aquí hasta que elijas.</translation>
    </message>
</context>
<context>
    <name>RunEditor</name>
    <message>
        <source>How fast: not known yet</source>
        <translation>Velocidad: aún no se sabe</translation>
    </message>
    <message>
        <source>Choose the surface first.</source>
        <translation>Elige antes el suelo.</translation>
    </message>
    <message>
        <source>Still to do: what lay on the sled, how far, and how long it took.</source>
        <translation>Falta: qué había en el trineo, qué distancia y cuánto tardó.</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>Tardó</translation>
    </message>
    <message>
        <source>by hand: 0.1 s give or take is counted in</source>
        <translation>a mano: se cuentan 0,1 s arriba o abajo</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>On the sled</source>
        <translation>En el trineo</translation>
    </message>
    <message>
        <source>plates on it; 0 with none</source>
        <translation>discos encima; 0 si no hay</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Qué distancia</translation>
    </message>
    <message>
        <source>between the two marks, from a flying start</source>
        <translation>entre las dos marcas, con salida lanzada</translation>
    </message>
    <message>
        <source>Her belt</source>
        <translation>Su cinturón</translation>
    </message>
    <message>
        <source>above the ground; leave out when the strap is level</source>
        <translation>sobre el suelo; déjalo fuera si la correa va horizontal</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>RunPage</name>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>a timed run on %1</source>
        <translation>una carrera cronometrada en %1</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Trineo</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Three runs with different loads, fresh for each, make her own line. Nobody else&apos;s line is used for her.</source>
        <translation>Tres carreras con cargas distintas, descansada en cada una, dan su propia recta. Para ella no se usa la de nadie más.</translation>
    </message>
</context>
<context>
    <name>ScaleChoice</name>
    <message>
        <source>another scale</source>
        <translation>otra báscula</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>ScaleEditor</name>
    <message>
        <source>Shows empty, under 0</source>
        <translation>Muestra en vacío, bajo 0</translation>
    </message>
    <message>
        <source>Shows empty</source>
        <translation>Muestra en vacío</translation>
    </message>
    <message>
        <source>with nothing on it</source>
        <translation>sin nada colgado</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>Known mass %1</source>
        <translation>Masa conocida %1</translation>
    </message>
    <message>
        <source>what hangs on it</source>
        <translation>lo que cuelga de ella</translation>
    </message>
    <message>
        <source>It reads, %1</source>
        <translation>Indica, %1</translation>
    </message>
    <message>
        <source>once it hangs still</source>
        <translation>cuando ya no se mueva</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>Esa entrada no existe.</translation>
    </message>
    <message>
        <source>Check a scale</source>
        <translation>Comprobar una báscula</translation>
    </message>
    <message>
        <source>Whatever is weighed is out by as much as the scale is. Hang something of known mass on it: a plate made to a competition standard, or water, of which a litre weighs %1. Never more than the scale and its hook are made for; feet clear of what hangs.</source>
        <translation>Todo lo que se pesa se desvía tanto como la báscula. Cuelga de ella algo de masa conocida: un disco hecho según una norma de competición, o agua: un litro pesa %1. Nunca más de lo que admiten la báscula y su gancho; los pies, lejos de lo que cuelga.</translation>
    </message>
    <message>
        <source>Empty, it shows</source>
        <translation>En vacío muestra</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 o más</translation>
    </message>
    <message>
        <source>under 0</source>
        <translation>bajo 0</translation>
    </message>
    <message>
        <source>One more known mass</source>
        <translation>Una masa conocida más</translation>
    </message>
    <message>
        <source>What does it show empty?</source>
        <translation>¿Qué muestra en vacío?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>¿De cuánto es su escalón?</translation>
    </message>
    <message>
        <source>What hangs on it?</source>
        <translation>¿Qué cuelga de ella?</translation>
    </message>
    <message>
        <source>What does it read?</source>
        <translation>¿Qué indica?</translation>
    </message>
    <message>
        <source>Hanging free, with nothing on it but the hook.</source>
        <translation>Colgando libre, sin nada más que el gancho.</translation>
    </message>
    <message>
        <source>Its true mass, with the strap. Best about as heavy as what will be weighed.</source>
        <translation>Su masa real, con la correa. Mejor si pesa más o menos como lo que se va a pesar.</translation>
    </message>
    <message>
        <source>Once it hangs still, just as it shows.</source>
        <translation>Cuando ya no se mueva, tal como lo muestra.</translation>
    </message>
    <message>
        <source>How good it is: not known yet</source>
        <translation>Lo exacta que es: aún no se sabe</translation>
    </message>
    <message>
        <source>It is more than a step out, and more than half a per cent: have it set right, or use another.</source>
        <translation>Se desvía más de un escalón y más de medio por ciento: haz que la ajusten o usa otra.</translation>
    </message>
    <message>
        <source>A second mass, near the heaviest you weigh, would make it surer.</source>
        <translation>Una segunda masa, cercana a lo más pesado que pesas, la haría más fiable.</translation>
    </message>
    <message>
        <source>Scale, steps of %1</source>
        <translation>Báscula, escalones de %1</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Báscula</translation>
    </message>
</context>
<context>
    <name>ScaleRow</name>
    <message>
        <source>Weighed on</source>
        <translation>Pesado en</translation>
    </message>
</context>
<context>
    <name>SecretEntry</name>
    <message>
        <source>That did not fit: nothing was added</source>
        <translation>Eso no cabía: no se añadió nada</translation>
    </message>
    <message numerus="yes">
        <source>%n characters</source>
        <translation>
            <numerusform>%n carácter</numerusform>
            <numerusform>%n caracteres</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Show what was typed: %1</source>
        <translation>Mostrar lo escrito: %1</translation>
    </message>
</context>
<context>
    <name>SetupHangs</name>
    <message>
        <source>What hangs</source>
        <translation>Lo que cuelga</translation>
    </message>
    <message>
        <source>Only iron. Hang a chain or a band.</source>
        <translation>Solo hierro. Cuelga una cadena o una banda.</translation>
    </message>
    <message>
        <source>Hang more</source>
        <translation>Colgar más</translation>
    </message>
    <message>
        <source>What do I hang?</source>
        <translation>¿Qué cuelgo?</translation>
    </message>
</context>
<context>
    <name>SetupKeeping</name>
    <message>
        <source>Keep set-up</source>
        <translation>Guardar montaje</translation>
    </message>
    <message>
        <source>What hangs was last looked over on %1.</source>
        <translation>Lo que cuelga se revisó por última vez el %1.</translation>
    </message>
    <message>
        <source>Choose who lifts it</source>
        <translation>Elige quién lo levanta</translation>
    </message>
</context>
<context>
    <name>SetupLoad</name>
    <message>
        <source>each side</source>
        <translation>cada lado</translation>
    </message>
    <message>
        <source>Bar and plates here</source>
        <translation>Barra y discos de aquí</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambiar</translation>
    </message>
</context>
<context>
    <name>SetupMeans</name>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde sale</translation>
    </message>
    <message>
        <source>At each height</source>
        <translation>En cada altura</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>What she lifts</source>
        <translation>Lo que levanta</translation>
    </message>
    <message>
        <source>for nobody yet, so it cannot be kept</source>
        <translation>aún para nadie, así que no se puede guardar</translation>
    </message>
    <message>
        <source>Her bar marks</source>
        <translation>Sus marcas de la barra</translation>
    </message>
    <message>
        <source>Enter her bar marks</source>
        <translation>Anotar sus marcas de la barra</translation>
    </message>
    <message>
        <source>Of her 1RM</source>
        <translation>De su 1RM</translation>
    </message>
    <message>
        <source>Warm up to it</source>
        <translation>Calentar hasta ahí</translation>
    </message>
    <message>
        <source>Heavier on the way down</source>
        <translation>Más carga al bajar</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>SetupPicture</name>
    <message>
        <source>Pull by height: %1</source>
        <translation>Tracción por altura: %1</translation>
    </message>
</context>
<context>
    <name>SetupsPage</name>
    <message>
        <source>kept set-ups, the last first</source>
        <translation>montajes guardados, el último primero</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>None is kept yet. Choose a lift under Bar marks, hang what she lifts, and keep it there.</source>
        <translation>Aún no hay ninguno guardado. Elige un ejercicio en Marcas de la barra, cuelga lo que levanta y guárdalo ahí.</translation>
    </message>
</context>
<context>
    <name>SheetHead</name>
    <message>
        <source>Back to %1</source>
        <translation>Volver a %1</translation>
    </message>
</context>
<context>
    <name>SideTag</name>
    <message>
        <source>L</source>
        <comment>left</comment>
        <translation>I</translation>
    </message>
    <message>
        <source>R</source>
        <comment>right</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>B</source>
        <comment>both</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>ambos lados</translation>
    </message>
</context>
<context>
    <name>SizeEditor</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Nothing is left of it: take it out instead.</source>
        <translation>No queda nada de ello: mejor quítalo.</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>SizePage</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>in place of %1</source>
        <translation>en lugar de %1</translation>
    </message>
    <message>
        <source>What it said at first stays in the vault&apos;s journal and can be read here.</source>
        <translation>Lo que decía al principio queda en el diario de la caja fuerte y se puede leer aquí.</translation>
    </message>
</context>
<context>
    <name>SizesPage</name>
    <message>
        <source>body mass and height; tap one to put it right</source>
        <translation>masa corporal y estatura; toca una para corregirla</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>None is kept yet. Enter body mass or height on the athlete&apos;s page, and keep it.</source>
        <translation>Aún no hay ninguna guardada. Anota la masa corporal o la estatura en la página de atleta y guárdala.</translation>
    </message>
</context>
<context>
    <name>SizesView</name>
    <message>
        <source>changes not kept</source>
        <translation>cambios sin guardar</translation>
    </message>
</context>
<context>
    <name>SledPage</name>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Time a run of hers</source>
        <translation>Cronometrar una carrera suya</translation>
    </message>
    <message>
        <source>Pull it again, or on another ground</source>
        <translation>Arrastrarlo otra vez, o en otro suelo</translation>
    </message>
    <message>
        <source>Pull it here</source>
        <translation>Arrastrarlo aquí</translation>
    </message>
    <message>
        <source>On</source>
        <translation>En</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>On the sled</source>
        <translation>En el trineo</translation>
    </message>
    <message>
        <source>Speed she loses</source>
        <translation>Velocidad que pierde</translation>
    </message>
    <message>
        <source>Clear lane, nobody in front of it. Stop for pain, dizziness, chest pain, sudden headache or numbness.</source>
        <translation>Carril despejado, nadie delante. Parar si hay dolor, mareo, dolor de pecho, dolor de cabeza repentino o entumecimiento.</translation>
    </message>
    <message>
        <source>Pushed, arms</source>
        <translation>Empujado, brazos</translation>
    </message>
</context>
<context>
    <name>SledView</name>
    <message>
        <source>%1. Pulled on %2.</source>
        <translation>%1. Arrastrado el %2.</translation>
    </message>
    <message>
        <source>%1; outside the loads it was pulled with, so less sure than it looks</source>
        <translation>%1; fuera de las cargas con las que se arrastró, así que menos seguro de lo que parece</translation>
    </message>
    <message>
        <source>%1 on it</source>
        <translation>%1 encima</translation>
    </message>
    <message>
        <source>Free she runs %1 by her own line.</source>
        <translation>Libre corre a %1 según su propia recta.</translation>
    </message>
    <message>
        <source>The empty sled costs more than that.</source>
        <translation>El trineo vacío ya cuesta más que eso.</translation>
    </message>
    <message>
        <source>Put on %1.</source>
        <translation>Pon %1.</translation>
    </message>
    <message>
        <source>Put on %1: past her runs, so guessed.</source>
        <translation>Pon %1: fuera de sus carreras, así que es una suposición.</translation>
    </message>
    <message>
        <source>On %1 %2 pull as hard.</source>
        <translation>En %1 tiran lo mismo %2.</translation>
    </message>
    <message>
        <source>On %1: %2</source>
        <translation>En %1: %2</translation>
    </message>
    <message>
        <source>It was not pulled here yet: friction is another on every ground, and in the wet.</source>
        <translation>Aún no se ha arrastrado aquí: el rozamiento es otro en cada suelo, y en mojado.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1° down</source>
        <translation>%1° hacia abajo</translation>
    </message>
    <message>
        <source>Pushed: %1</source>
        <translation>Empujado: %1</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>Plantel</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Lock the vault</source>
        <translation>Bloquear la caja fuerte</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Añadir atleta</translation>
    </message>
    <message>
        <source>Done lately</source>
        <translation>Hecho hace poco</translation>
    </message>
    <message>
        <source>To be settled</source>
        <translation>Por resolver</translation>
    </message>
    <message>
        <source>devices said different things</source>
        <translation>los dispositivos dijeron cosas distintas</translation>
    </message>
    <message>
        <source>Nobody is in the squad yet. A name is enough to begin with; bar marks, birth year and the rest can wait.</source>
        <translation>Aún no hay nadie en el plantel. Para empezar basta un nombre; las marcas de la barra, el año de nacimiento y lo demás pueden esperar.</translation>
    </message>
</context>
<context>
    <name>SquadView</name>
    <message>
        <source>no bar marks</source>
        <translation>sin marcas de la barra</translation>
    </message>
    <message>
        <source>bar marks: %1</source>
        <translation>marcas de la barra: %1</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>todo el mundo</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
</context>
<context>
    <name>StandingLines</name>
    <message>
        <source>May train today</source>
        <translation>Puede entrenar hoy</translation>
    </message>
    <message>
        <source>Cleared for</source>
        <translation>Con autorización para</translation>
    </message>
    <message>
        <source>lifts and methods, and by whom</source>
        <translation>ejercicios y métodos, y por quién</translation>
    </message>
</context>
<context>
    <name>StandingView</name>
    <message>
        <source>changes not kept</source>
        <translation>cambios sin guardar</translation>
    </message>
    <message numerus="yes">
        <source>%n hold</source>
        <translation>
            <numerusform>%n vale</numerusform>
            <numerusform>%n valen</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada todavía</translation>
    </message>
</context>
<context>
    <name>StatusEditor</name>
    <message>
        <source>Say how much: all, some or none.</source>
        <translation>Di cuánto: todo, algo o nada.</translation>
    </message>
    <message>
        <source>Say what not, by the keys or in words.</source>
        <translation>Di qué no, con las teclas o con palabras.</translation>
    </message>
    <message>
        <source>until it is lifted</source>
        <translation>hasta que se levante</translation>
    </message>
</context>
<context>
    <name>StatusPage</name>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>how much she may do</source>
        <translation>cuánto puede hacer</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Lift it</source>
        <translation>Levantar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>cuando se diga quién</translation>
    </message>
    <message>
        <source>She may do</source>
        <translation>Puede hacer</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>some</source>
        <translation>algo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Not these lifts</source>
        <translation>Estos ejercicios no</translation>
    </message>
    <message>
        <source>Not in this way</source>
        <translation>De esta manera no</translation>
    </message>
    <message>
        <source>In words; no diagnoses</source>
        <translation>Con palabras; sin diagnósticos</translation>
    </message>
    <message>
        <source>All or none can be set now, what not has to wait</source>
        <translation>Ahora se puede poner todo o nada; qué no tiene que esperar</translation>
    </message>
    <message>
        <source>Who set it</source>
        <translation>Quién lo puso</translation>
    </message>
    <message>
        <source>by name or task, as the physiotherapist</source>
        <translation>por nombre o función, como la fisioterapeuta</translation>
    </message>
    <message>
        <source>Not this lift</source>
        <translation>Este ejercicio no</translation>
    </message>
    <message>
        <source>Another single lift</source>
        <translation>Otro ejercicio suelto</translation>
    </message>
</context>
<context>
    <name>StayAwake</name>
    <message>
        <source>A coach is at work.</source>
        <translation>Hay alguien entrenando.</translation>
    </message>
</context>
<context>
    <name>StepSheet</name>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>the last measurement stays</source>
        <translation>queda la última medición</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
    <message>
        <source>what is keyed waits</source>
        <translation>lo tecleado espera</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1, less: %2</source>
        <translation>%1, menos: %2</translation>
    </message>
    <message>
        <source>type</source>
        <translation>escribir</translation>
    </message>
    <message>
        <source>%1: %2, type</source>
        <translation>%1: %2, escribir</translation>
    </message>
    <message>
        <source>%1, more: %2</source>
        <translation>%1, más: %2</translation>
    </message>
</context>
<context>
    <name>StockLine</name>
    <message>
        <source>One pair of %1 less</source>
        <translation>Un par de %1 menos</translation>
    </message>
    <message>
        <source>One pair of %1 more</source>
        <translation>Un par de %1 más</translation>
    </message>
</context>
<context>
    <name>StoppedPage</name>
    <message>
        <source>Vault</source>
        <translation>Caja fuerte</translation>
    </message>
    <message>
        <source>TRY AGAIN</source>
        <translation>REINTENTAR</translation>
    </message>
    <message>
        <source>Nothing has been changed in the vault.</source>
        <translation>No se ha cambiado nada en la caja fuerte.</translation>
    </message>
    <message>
        <source>Looking for the vault</source>
        <translation>Buscando la caja fuerte</translation>
    </message>
</context>
<context>
    <name>StrengthPage</name>
    <message>
        <source>strength: one repetition maximum, as a range</source>
        <translation>fuerza: máximo de una repetición, como intervalo</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>fuerza</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>No test is kept yet. Open a lift and add one: a set of up to 10 reps with what was left in reserve, or a maximum that was tried out.</source>
        <translation>Aún no hay ninguna prueba guardada. Abre un ejercicio y añade una: una serie de hasta 10 repeticiones con lo que quedó en reserva, o un máximo probado.</translation>
    </message>
    <message>
        <source>F/M is what was lifted by body mass; F/M^0.67 takes out that bigger people are stronger. Both are for one person over time, and no norm.</source>
        <translation>F/M es lo levantado por masa corporal; F/M^0.67 descuenta que las personas más grandes son más fuertes. Ambas sirven para una persona a lo largo del tiempo y no son una norma.</translation>
    </message>
    <message>
        <source>The last day with plain iron counts, not the best. Limits take the low end of the range, percentages its middle.</source>
        <translation>Vale el último día solo con hierro, no el mejor. Los límites toman el extremo bajo del intervalo; los porcentajes, su centro.</translation>
    </message>
</context>
<context>
    <name>StrengthView</name>
    <message>
        <source>no maximum</source>
        <translation>sin máximo</translation>
    </message>
    <message>
        <source>nothing follows from its tests</source>
        <translation>de sus pruebas no se deduce nada</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>tested</source>
        <translation>probado</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>older than your limit: test again</source>
        <translation>más antiguo que tu límite: prueba de nuevo</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>con: %1</translation>
    </message>
    <message>
        <source>her body is in it</source>
        <translation>su cuerpo está incluido</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>sin probar</translation>
    </message>
</context>
<context>
    <name>SurfaceEditor</name>
    <message>
        <source>How it slides: not known yet</source>
        <translation>Cómo desliza: aún no se sabe</translation>
    </message>
    <message>
        <source>This sled is not there any more.</source>
        <translation>Ese trineo ya no está.</translation>
    </message>
    <message>
        <source>Still to do: say which surface it is.</source>
        <translation>Falta: di qué suelo es.</translation>
    </message>
    <message>
        <source>Still to do: pull it with two different loads, or more.</source>
        <translation>Falta: arrástralo con dos cargas distintas, o más.</translation>
    </message>
    <message>
        <source>On the sled, pull %1</source>
        <translation>En el trineo, arrastre %1</translation>
    </message>
    <message>
        <source>plates on it; 0 with none</source>
        <translation>discos encima; 0 si no hay</translation>
    </message>
    <message>
        <source>The scale shows, pull %1</source>
        <translation>La báscula muestra, arrastre %1</translation>
    </message>
    <message>
        <source>at a steady walk, once it slides</source>
        <translation>a paso constante, cuando ya desliza</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>the least it shows</source>
        <translation>lo mínimo que muestra</translation>
    </message>
    <message>
        <source>Upper end of the strap</source>
        <translation>Extremo superior de la correa</translation>
    </message>
    <message>
        <source>above the ground; leave out when it was pulled level</source>
        <translation>sobre el suelo; déjalo fuera si se tiró en horizontal</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>SurfacePage</name>
    <message>
        <source>How it slides</source>
        <translation>Cómo desliza</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>a steady walk, a scale in the strap</source>
        <translation>a paso constante, con una báscula en la correa</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Trineo</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Ground it was pulled on before</source>
        <translation>Suelo en el que ya se arrastró</translation>
    </message>
    <message>
        <source>Ground, as wet grass</source>
        <translation>Suelo, por ejemplo hierba mojada</translation>
    </message>
</context>
<context>
    <name>TakeOutPage</name>
    <message>
        <source>Take out %1?</source>
        <translation>¿Quitar a %1?</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Quitar a %1</translation>
    </message>
    <message>
        <source>The squad shows this person no more, with bar marks and set-ups. What was entered stays in the vault&apos;s journal: this is no erasure.</source>
        <translation>El plantel ya no muestra a esta persona, ni sus marcas de la barra ni sus montajes. Lo anotado queda en el diario de la caja fuerte: esto no es un borrado.</translation>
    </message>
    <message>
        <source>You can undo it until the vault is locked.</source>
        <translation>Puedes deshacerlo hasta que se bloquee la caja fuerte.</translation>
    </message>
</context>
<context>
    <name>TestEditor</name>
    <message>
        <source>The load comes first.</source>
        <translation>Primero, la carga.</translation>
    </message>
    <message>
        <source>Her body mass comes first: it is lifted too.</source>
        <translation>Primero, su masa corporal: también se levanta.</translation>
    </message>
    <message>
        <source>Count the reps that were done.</source>
        <translation>Cuenta las repeticiones hechas.</translation>
    </message>
    <message>
        <source>No rep done and none missed is no test.</source>
        <translation>Ninguna hecha y ninguna fallada no es una prueba.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Her 1RM: %1</source>
        <translation>Su 1RM: %1</translation>
    </message>
    <message>
        <source>middle %1, tested</source>
        <translation>centro %1, probado</translation>
    </message>
    <message>
        <source>middle %1, estimated by seven formulas</source>
        <translation>centro %1, estimado con siete fórmulas</translation>
    </message>
    <message>
        <source>%1; with nothing said of the reserve it is taken for none</source>
        <translation>%1; si no se dice la reserva, se toma como ninguna</translation>
    </message>
    <message>
        <source>No maximum follows: %1</source>
        <translation>No se deduce un máximo: %1</translation>
    </message>
    <message>
        <source>%1 It can be kept, and counts for nothing.</source>
        <translation>%1 Se puede guardar y no cuenta para nada.</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Taken off her</source>
        <translation>Se le quita</translation>
    </message>
    <message>
        <source>Hung on her</source>
        <translation>Colgado de ella</translation>
    </message>
    <message>
        <source>0 where nothing is</source>
        <translation>0 si no hay nada</translation>
    </message>
    <message>
        <source>bar, collars and plates</source>
        <translation>barra, cierres y discos</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>as measured last</source>
        <translation>según la última medida</translation>
    </message>
    <message>
        <source>Smallest jump</source>
        <translation>Salto más pequeño</translation>
    </message>
    <message>
        <source>from one load that was tried to the next; %1 where nobody noted it</source>
        <translation>de una carga intentada a la siguiente; %1 si nadie lo anotó</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>Ese número no existe.</translation>
    </message>
</context>
<context>
    <name>TestPage</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>A test</source>
        <translation>Una prueba</translation>
    </message>
    <message>
        <source>%1 · not kept yet</source>
        <translation>%1 · aún sin guardar</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>a set</source>
        <translation>una serie</translation>
    </message>
    <message>
        <source>a maximum tried out</source>
        <translation>un máximo probado</translation>
    </message>
    <message>
        <source>What it was</source>
        <translation>Qué fue</translation>
    </message>
    <message>
        <source>hangs on her</source>
        <translation>cuelga de ella</translation>
    </message>
    <message>
        <source>helps her</source>
        <translation>la ayuda</translation>
    </message>
    <message>
        <source>The load</source>
        <translation>La carga</translation>
    </message>
    <message>
        <source>Reps done</source>
        <translation>Repeticiones hechas</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Reps left in reserve, as she says</source>
        <translation>Repeticiones en reserva, según dice ella</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>one was missed</source>
        <translation>una fallada</translation>
    </message>
    <message>
        <source>A rep missed behind them</source>
        <translation>Una fallada después</translation>
    </message>
    <message>
        <source>In a kept set-up</source>
        <translation>En un montaje guardado</translation>
    </message>
    <message>
        <source>Hung besides iron</source>
        <translation>Además del hierro colgaba</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>otro día</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>A maximal test is not for everybody</source>
        <translation>Una prueba máxima no es para todo el mundo</translation>
    </message>
    <message>
        <source>Warm, screened and cleared for it; supervised, with safeties and spotters. Stop for pain, dizziness, chest pain, sudden headache or numbness. A set with reps in reserve says nearly as much. Your local rules come first.</source>
        <translation>Con calentamiento, revisión y autorización; con supervisión, topes de seguridad y ayudantes. Para ante dolor, mareo, dolor de pecho, dolor de cabeza repentino o entumecimiento. Una serie con repeticiones en reserva dice casi lo mismo. Las normas locales van primero.</translation>
    </message>
    <message>
        <source>May be under age</source>
        <translation>Puede ser menor de edad</translation>
    </message>
    <message>
        <source>Technique before load, qualified supervision, and no maximal lift without an approval by name.</source>
        <translation>Técnica antes que carga, supervisión cualificada y ningún levantamiento máximo sin una autorización con nombre.</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
</context>
<context>
    <name>TestRows</name>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corregir</translation>
    </message>
</context>
<context>
    <name>ThingRow</name>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Measure %1</source>
        <translation>Medir %1</translation>
    </message>
</context>
<context>
    <name>ThingsPage</name>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Kit here</source>
        <translation>Material de aquí</translation>
    </message>
    <message>
        <source>Tap what to hang</source>
        <translation>Toca lo que vas a colgar</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Measure new kit</source>
        <translation>Medir material nuevo</translation>
    </message>
    <message>
        <source>No kit is measured yet. A chain takes a minute: weigh it, or gauge one link. A band takes four: hang plates on it and read its length.</source>
        <translation>Aún no hay material medido. Una cadena lleva un minuto: pésala o calibra un eslabón. Una banda, cuatro: cuélgale discos y lee su longitud.</translation>
    </message>
    <message>
        <source>Take along</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>kit of another venue, for now</source>
        <translation>material de otro lugar, por ahora</translation>
    </message>
    <message>
        <source>Copy a list</source>
        <translation>Copiar una lista</translation>
    </message>
    <message>
        <source>names only, to be measured</source>
        <translation>solo nombres, por medir</translation>
    </message>
    <message>
        <source>Add a venue</source>
        <translation>Añadir un lugar</translation>
    </message>
    <message>
        <source>Just arrived</source>
        <translation>Acabo de llegar</translation>
    </message>
    <message>
        <source>tyres, logs, kegs, sleds, handles: one after the other</source>
        <translation>ruedas, troncos, barriles, trineos, asas: uno tras otro</translation>
    </message>
</context>
<context>
    <name>ToggleRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
</context>
<context>
    <name>ToolEditor</name>
    <message>
        <source>Still to do: read it with a known mass on it.</source>
        <translation>Aún falta: léela con una masa conocida colgada.</translation>
    </message>
</context>
<context>
    <name>ToolGuide</name>
    <message>
        <source>step 1</source>
        <translation>paso 1</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
</context>
<context>
    <name>ToolPage</name>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Nombre, si le das uno</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>¿Cuántas?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>dos iguales</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
</context>
<context>
    <name>ToolStepsPage</name>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
</context>
<context>
    <name>UndoKey</name>
    <message>
        <source>Undo:</source>
        <translation>Deshacer:</translation>
    </message>
</context>
<context>
    <name>UnlockPage</name>
    <message>
        <source>Unlock</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>with the recovery code</source>
        <translation>con el código de rescate</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Abrir con esta frase de acceso</translation>
    </message>
    <message>
        <source>Use the passphrase</source>
        <translation>Usar la frase de acceso</translation>
    </message>
    <message>
        <source>Use the recovery code</source>
        <translation>Usar el código de rescate</translation>
    </message>
    <message>
        <source>UNLOCK</source>
        <translation>ABRIR</translation>
    </message>
    <message>
        <source>This is a season of Marrow Hill, an invented club. Its passphrase is no secret: %1</source>
        <translation>Esta es una temporada de Marrow Hill, un club inventado. Su frase de acceso no es secreta: %1</translation>
    </message>
    <message>
        <source>Recovery code</source>
        <translation>Código de rescate</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de acceso</translation>
    </message>
    <message>
        <source>five groups, from your paper</source>
        <translation>cinco grupos, de tu papel</translation>
    </message>
    <message>
        <source>five words with spaces, or your own</source>
        <translation>cinco palabras con espacios, o la tuya</translation>
    </message>
</context>
<context>
    <name>UsePage</name>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>DO NOT USE</source>
        <translation>NO USAR</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>LISTO</translation>
    </message>
    <message>
        <source>NOT READY: look over first</source>
        <translation>NO LISTO: revisar antes</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Held against</source>
        <translation>Comparado con</translation>
    </message>
    <message>
        <source>the most that she may have in her hands</source>
        <translation>lo máximo que puede tener en las manos</translation>
    </message>
    <message>
        <source>How it slides, and her runs</source>
        <translation>Cómo desliza, y sus carreras</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Cómo se midió</translation>
    </message>
    <message>
        <source>Stop for pain, dizziness, chest pain, sudden headache or numbness. Local rules, and whoever is licensed or responsible here, go before this page.</source>
        <translation>Parar si hay dolor, mareo, dolor de pecho, dolor de cabeza repentino o entumecimiento. Las normas locales y quien esté habilitado o sea responsable aquí van antes que esta página.</translation>
    </message>
</context>
<context>
    <name>UseView</name>
    <message>
        <source>Read its diameter and width, and what a flip takes is known.</source>
        <translation>Lee su diámetro y su ancho, y se sabrá lo que pide un volteo.</translation>
    </message>
    <message>
        <source>Off the ground its edge takes %1 N straight up, most of the whole flip; at %2° it stands by itself.</source>
        <translation>Para dejar el suelo su borde pide %1 N en vertical, lo máximo de todo el volteo; a %2° se sostiene sola.</translation>
    </message>
    <message>
        <source>%1 That is %2 % of her lowest deadlift, give-or-take counted in.</source>
        <translation>%1 Eso es el %2 % de la estimación más baja de su peso muerto, contado el margen.</translation>
    </message>
    <message>
        <source>%1 % of her %2</source>
        <translation>%1 % de su máximo: %2</translation>
    </message>
    <message>
        <source>no lift</source>
        <translation>ningún ejercicio</translation>
    </message>
    <message>
        <source>Nobody knows whether she may</source>
        <translation>Nadie sabe si puede</translation>
    </message>
    <message>
        <source>In her hands at once: %1.</source>
        <translation>En sus manos a la vez: %1.</translation>
    </message>
    <message>
        <source>%1 % of her body mass.</source>
        <translation>%1 % de su masa corporal.</translation>
    </message>
    <message>
        <source>%1 % of her lowest deadlift.</source>
        <translation>%1 % de la estimación más baja de su peso muerto.</translation>
    </message>
    <message>
        <source>One lap of the lane: %1 kg·m, which are no tonnage.</source>
        <translation>Una vuelta al carril: %1 kg·m, que no son tonelaje.</translation>
    </message>
    <message>
        <source>Plates on each handle</source>
        <translation>Discos en cada asa</translation>
    </message>
    <message>
        <source>Plates on it</source>
        <translation>Discos puestos</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Puesta en</translation>
    </message>
    <message>
        <source>%1°, edge at %2: %3 N</source>
        <translation>%1°, borde a %2: %3 N</translation>
    </message>
</context>
<context>
    <name>VaultMaker</name>
    <message>
        <source>Five of %1 words, drawn by this device: 1 in 2 to the power of %2.</source>
        <translation>Cinco de %1 palabras, sorteadas por este dispositivo: 1 entre 2 elevado a %2.</translation>
    </message>
    <message>
        <source>Those are not the five words above. One space stands between two words.</source>
        <translation>Esas no son las cinco palabras de arriba. Entre dos palabras va un espacio.</translation>
    </message>
    <message numerus="yes">
        <source>At least %n characters: there are %1.</source>
        <translation>
            <numerusform>Al menos %n carácter: hay %1.</numerusform>
            <numerusform>Al menos %n caracteres: hay %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The two are not the same. Hold Show to see them.</source>
        <translation>No son iguales. Mantén pulsado Mostrar para verlas.</translation>
    </message>
    <message>
        <source>That is another recovery code. Type the one that was shown.</source>
        <translation>Ese es otro código de rescate. Escribe el que se mostró.</translation>
    </message>
</context>
<context>
    <name>VenuePage</name>
    <message>
        <source>Add a venue</source>
        <translation>Añadir un lugar</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>GUARDAR</translation>
    </message>
    <message>
        <source>Name of the place</source>
        <translation>Nombre del lugar</translation>
    </message>
    <message>
        <source>what is measured there is listed under it</source>
        <translation>lo que se mide allí aparece bajo ese nombre</translation>
    </message>
</context>
<context>
    <name>WantedPlaces</name>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
</context>
<context>
    <name>WeighedHere</name>
    <message>
        <source>The bar weighs</source>
        <translation>La barra pesa</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>según la báscula</translation>
    </message>
    <message>
        <source>as marked</source>
        <translation>según la marca</translation>
    </message>
    <message>
        <source>Tap weighed plates to load with what they weigh, or with their mark again. Chalk it on them.</source>
        <translation>Toca los discos que se pesaron para cargar con lo que pesan, o de nuevo con su marca. Márcalo en ellos con tiza.</translation>
    </message>
</context>
<context>
    <name>WeighedIronView</name>
    <message>
        <source>Plates that are not here</source>
        <translation>Discos que no están aquí</translation>
    </message>
    <message>
        <source>%1, weighed %2</source>
        <translation>%1, pesaje: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>as keyed</source>
        <translation>según lo tecleado</translation>
    </message>
    <message>
        <source>each %1</source>
        <translation>cada uno %1</translation>
    </message>
    <message>
        <source>not here, or not to be used: tap to load by the mark again</source>
        <translation>no está aquí, o no se debe usar: toca para cargar de nuevo según la marca</translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Make your vault</source>
        <translation>Crea tu caja fuerte</translation>
    </message>
    <message>
        <source>once, on this device</source>
        <translation>una vez, en este dispositivo</translation>
    </message>
    <message>
        <source>FIVE WORDS</source>
        <translation>CINCO PALABRAS</translation>
    </message>
    <message>
        <source>drawn for me</source>
        <translation>sorteadas para mí</translation>
    </message>
    <message>
        <source>A passphrase of my own</source>
        <translation>Mi propia frase de acceso</translation>
    </message>
    <message>
        <source>Everything about your athletes goes into a vault on this device. Nobody reads it without the passphrase: no thief, no finder, nobody at a repair shop.</source>
        <translation>Todo lo de tus atletas va a una caja fuerte en este dispositivo. Nadie lo lee sin la frase de acceso: ni quien lo robe, ni quien lo encuentre, ni nadie en un taller de reparación.</translation>
    </message>
    <message>
        <source>A recovery code opens it should you forget the passphrase. Without both, nobody can open it, and that includes us.</source>
        <translation>Un código de rescate la abre si olvidas la frase de acceso. Sin ninguna de las dos cosas nadie puede abrirla, y eso nos incluye.</translation>
    </message>
    <message>
        <source>You need paper, a pen and two minutes.</source>
        <translation>Necesitas papel, bolígrafo y dos minutos.</translation>
    </message>
</context>
<context>
    <name>WhatToHangPage</name>
    <message>
        <source>What do I hang?</source>
        <translation>¿Qué cuelgo?</translation>
    </message>
    <message>
        <source>both sides alike, from what is here and free</source>
        <translation>los dos lados iguales, con lo que hay aquí y está libre</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation>Dejar de buscar</translation>
    </message>
    <message>
        <source>HANG THIS</source>
        <translation>COLGAR ESTO</translation>
    </message>
    <message>
        <source>Chains</source>
        <translation>Cadenas</translation>
    </message>
    <message>
        <source>may hang</source>
        <translation>se pueden usar</translation>
    </message>
    <message>
        <source>stay off</source>
        <translation>no se usan</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bandas</translation>
    </message>
    <message>
        <source>Say what the pull should be, at one place or at several.</source>
        <translation>Di cuánta tracción quieres, en un punto o en varios.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Se quiere</translation>
    </message>
    <message>
        <source>as a load</source>
        <translation>como carga</translation>
    </message>
    <message>
        <source>in % of a 1RM</source>
        <translation>en % de un 1RM</translation>
    </message>
    <message>
        <source>1RM</source>
        <translation>1RM</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Level with her strength</source>
        <translation>Pareja con su fuerza</translation>
    </message>
    <message>
        <source>no matter</source>
        <translation>da igual</translation>
    </message>
    <message>
        <source>as level as it goes</source>
        <translation>lo más pareja posible</translation>
    </message>
    <message>
        <source>What she can hold</source>
        <translation>Lo que puede sostener</translation>
    </message>
    <message>
        <source>isometric pulls at three heights at least</source>
        <translation>tracciones isométricas al menos a tres alturas</translation>
    </message>
    <message>
        <source>typed for now, not tested</source>
        <translation>por ahora, sin probar</translation>
    </message>
</context>
<context>
    <name>WhenHolds</name>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
</context>
<context>
    <name>WhoSays</name>
    <message>
        <source>named before</source>
        <translation>ya nombrados</translation>
    </message>
</context>
<context>
    <name>Working</name>
    <message>
        <source>One moment: the key is being made. It takes a second or two on purpose, so that guessing costs as much each time.</source>
        <translation>Un momento: se está creando la clave. Tarda uno o dos segundos a propósito, para que cada intento de adivinar cueste lo mismo.</translation>
    </message>
</context>
<context>
    <name>askingtexts</name>
    <message>
        <source>lent, or out of use</source>
        <translation>prestado o fuera de uso</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>aún sin medir</translation>
    </message>
    <message>
        <source>only one: both sides hang alike</source>
        <translation>solo hay uno: los dos lados van iguales</translation>
    </message>
    <message>
        <source>no place to anchor it: measure the rack&apos;s</source>
        <translation>sin punto de anclaje: mide los del rack</translation>
    </message>
    <message>
        <source>not measured as far as it would be stretched</source>
        <translation>no se midió hasta donde se estiraría</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1: takes off %2 at the bottom and %3 at the top.</source>
        <translation>%1: quita %2 abajo y %3 arriba.</translation>
    </message>
    <message>
        <source>%1: gives the rise, %2 from bottom to top.</source>
        <translation>%1: da la subida, %2 de abajo arriba.</translation>
    </message>
    <message>
        <source>%1: %2 of the rise.</source>
        <translation>%1: %2 de la subida.</translation>
    </message>
    <message>
        <source>%1: %2 all the way.</source>
        <translation>%1: %2 en todo el recorrido.</translation>
    </message>
    <message>
        <source>%1 instead would do as well, a little less near.</source>
        <translation>%1 en su lugar también valdría, un poco menos cerca.</translation>
    </message>
    <message>
        <source>With %1 besides it would do as well, a little less near.</source>
        <translation>Con %1 además también valdría, un poco menos cerca.</translation>
    </message>
    <message>
        <source>%1 instead would be %2 too little %3.</source>
        <translation>%1 en su lugar sería %2 de menos %3.</translation>
    </message>
    <message>
        <source>With %1 it would be %2 too little %3.</source>
        <translation>Con %1 serían %2 de menos %3.</translation>
    </message>
    <message>
        <source>%1 instead would overshoot by %2 %3.</source>
        <translation>%1 en su lugar se pasaría %2 %3.</translation>
    </message>
    <message>
        <source>With %1 it would overshoot by %2 %3.</source>
        <translation>Con %1 se pasaría %2 %3.</translation>
    </message>
    <message>
        <source>At the bottom</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>In the sticking zone</source>
        <translation>En la zona de estancamiento</translation>
    </message>
    <message>
        <source>At the top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>Mean of the path</source>
        <translation>Media del recorrido</translation>
    </message>
    <message>
        <source>at the bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>in the sticking zone</source>
        <translation>en la zona de estancamiento</translation>
    </message>
    <message>
        <source>at the top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>on the mean</source>
        <translation>en la media</translation>
    </message>
    <message>
        <source>Isometric pulls along more of her path come first</source>
        <translation>Primero, tracciones isométricas en más parte de su recorrido</translation>
    </message>
    <message>
        <source>Her bar marks come first</source>
        <translation>Primero, sus marcas de la barra</translation>
    </message>
    <message>
        <source>The plates come first</source>
        <translation>Primero, los discos</translation>
    </message>
    <message>
        <source>It cannot be asked yet</source>
        <translation>Aún no se puede preguntar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not among the choices: %1.</source>
        <translation>No entra en la elección: %1.</translation>
    </message>
    <message>
        <source>%1: just that</source>
        <translation>%1: justo eso</translation>
    </message>
    <message>
        <source>%1: %2 less</source>
        <translation>%1: %2 menos</translation>
    </message>
    <message>
        <source>%1: %2 more</source>
        <translation>%1: %2 más</translation>
    </message>
    <message>
        <source>her share varies by %1 %</source>
        <translation>su parte varía un %1 %</translation>
    </message>
    <message>
        <source>take off: %1</source>
        <translation>quitar: %1</translation>
    </message>
    <message>
        <source>hang: %1</source>
        <translation>colgar: %1</translation>
    </message>
    <message>
        <source>hang another way: %1</source>
        <translation>colgar de otra forma: %1</translation>
    </message>
    <message>
        <source>Iron alone comes nearest.</source>
        <translation>Solo con hierro se acerca más.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún no hay</translation>
    </message>
    <message numerus="yes">
        <source>%Ln pulls</source>
        <translation>
            <numerusform>%Ln tracción</numerusform>
            <numerusform>%Ln tracciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln heights</source>
        <translation>
            <numerusform>%Ln altura</numerusform>
            <numerusform>%Ln alturas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>She pulls %1 % of what she can hold, from %2 to %3. That share varies by %4 %; with plain iron by %5 %.</source>
        <translation>Tira el %1 % de lo que puede sostener, de %2 a %3. Esa parte varía un %4 %; solo con hierro, un %5 %.</translation>
    </message>
    <message>
        <source>Stopped: something better may exist.</source>
        <translation>Parado: puede haber algo mejor.</translation>
    </message>
    <message>
        <source>Not proved: something better may exist, but nothing comes nearer than %1.</source>
        <translation>Sin probar: puede haber algo mejor, pero nada se acerca más que %1.</translation>
    </message>
</context>
<context>
    <name>contestedtexts</name>
    <message>
        <source>Somebody</source>
        <translation>Alguien</translation>
    </message>
    <message>
        <source>A venue</source>
        <translation>Un lugar</translation>
    </message>
    <message>
        <source>A thing of the kit</source>
        <translation>Una pieza del material</translation>
    </message>
    <message>
        <source>A lift</source>
        <translation>Un ejercicio</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>squad</source>
        <translation>plantel</translation>
    </message>
    <message>
        <source>birth year</source>
        <translation>año de nacimiento</translation>
    </message>
    <message>
        <source>guardian&apos;s agreement</source>
        <translation>permiso de los padres</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notas</translation>
    </message>
    <message>
        <source>bar marks for the %1</source>
        <translation>marcas de la barra para %1</translation>
    </message>
    <message>
        <source>something a newer app keeps</source>
        <translation>algo que guarda una app más nueva</translation>
    </message>
    <message>
        <source>one or a pair</source>
        <translation>una o un par</translation>
    </message>
    <message>
        <source>where it belongs</source>
        <translation>dónde tiene su sitio</translation>
    </message>
    <message>
        <source>fit or out of use</source>
        <translation>apto o fuera de uso</translation>
    </message>
    <message>
        <source>borrowed or not</source>
        <translation>tomado en préstamo o no</translation>
    </message>
    <message>
        <source>lent or not</source>
        <translation>prestado o no</translation>
    </message>
    <message>
        <source>where it is for now</source>
        <translation>dónde está por ahora</translation>
    </message>
    <message>
        <source>the lift</source>
        <translation>el ejercicio</translation>
    </message>
    <message>
        <source>what hangs</source>
        <translation>lo que cuelga</translation>
    </message>
    <message>
        <source>which lift it is like</source>
        <translation>a qué ejercicio se parece</translation>
    </message>
    <message>
        <source>where it starts</source>
        <translation>dónde empieza</translation>
    </message>
    <message>
        <source>of mass</source>
        <translation>de masa</translation>
    </message>
    <message>
        <source>of length</source>
        <translation>de longitud</translation>
    </message>
    <message>
        <source>taken out or not</source>
        <translation>quitado o no</translation>
    </message>
    <message>
        <source>body mass and height</source>
        <translation>masa corporal y estatura</translation>
    </message>
    <message>
        <source>a measurement</source>
        <translation>una medición</translation>
    </message>
    <message>
        <source>something a newer app wrote</source>
        <translation>algo que escribió una app más nueva</translation>
    </message>
    <message>
        <source>bottom %1</source>
        <translation>abajo %1</translation>
    </message>
    <message>
        <source>sticking from %1</source>
        <translation>estancamiento desde %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>arriba %1</translation>
    </message>
    <message>
        <source>rack %1</source>
        <translation>apoyo %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún no hay</translation>
    </message>
    <message>
        <source>%1, iron alone</source>
        <translation>%1, solo hierro</translation>
    </message>
    <message>
        <source>%1 and %2 hung</source>
        <translation>%1 y %2 colgando</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>con los discos en el suelo</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>desde su marca de abajo</translation>
    </message>
    <message>
        <source>a pair</source>
        <translation>un par</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>apto</translation>
    </message>
    <message>
        <source>a venue taken out</source>
        <translation>un lugar quitado</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>a unit of a newer app</source>
        <translation>una unidad de una app más nueva</translation>
    </message>
    <message>
        <source>left empty</source>
        <translation>en blanco</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>still there</source>
        <translation>sigue ahí</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Your limits</source>
        <translation>Tus límites</translation>
    </message>
    <message>
        <source>clearance taken back or not</source>
        <translation>autorización retirada o no</translation>
    </message>
    <message>
        <source>day status lifted or not</source>
        <translation>estado del día levantado o no</translation>
    </message>
    <message>
        <source>a test of strength</source>
        <translation>una prueba de fuerza</translation>
    </message>
    <message>
        <source>a clearance</source>
        <translation>una autorización</translation>
    </message>
    <message>
        <source>day status</source>
        <translation>estado del día</translation>
    </message>
    <message>
        <source>an isometric pull</source>
        <translation>una tracción isométrica</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, por %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>as it was shipped: %1</source>
        <translation>como venía: %1</translation>
    </message>
    <message>
        <source>what makes the way down heavier</source>
        <translation>lo que hace más pesada la bajada</translation>
    </message>
    <message>
        <source>A surface</source>
        <translation>Una superficie</translation>
    </message>
    <message>
        <source>what loads of the %1 are held against</source>
        <translation>con qué se comparan las cargas de %1</translation>
    </message>
    <message>
        <source>length of the lane</source>
        <translation>longitud del carril</translation>
    </message>
    <message>
        <source>how a sled slides</source>
        <translation>cómo desliza un trineo</translation>
    </message>
    <message>
        <source>a timed run with a sled</source>
        <translation>una carrera cronometrada con un trineo</translation>
    </message>
    <message>
        <source>%1 % of the %2</source>
        <translation>%1 % de %2</translation>
    </message>
    <message>
        <source>%1, pulled with %2 loads</source>
        <translation>%1, tirado con %2 cargas</translation>
    </message>
    <message>
        <source>%1 on the sled over %2 in %3 s</source>
        <translation>%1 sobre el trineo en %2 en %3 s</translation>
    </message>
</context>
<context>
    <name>gatetexts</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>plain iron</source>
        <translation>solo hierro</translation>
    </message>
    <message>
        <source>maximal test</source>
        <translation>prueba máxima</translation>
    </message>
    <message>
        <source>eccentric overload</source>
        <translation>sobrecarga excéntrica</translation>
    </message>
    <message>
        <source>chains</source>
        <translation>cadenas</translation>
    </message>
    <message>
        <source>bands from below</source>
        <translation>bandas desde abajo</translation>
    </message>
    <message>
        <source>bands from above</source>
        <translation>bandas desde arriba</translation>
    </message>
    <message>
        <source>bench aid</source>
        <translation>ayuda de banca</translation>
    </message>
    <message>
        <source>machines</source>
        <translation>máquinas</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>por encima de la cabeza</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>rueda</translation>
    </message>
    <message>
        <source>log, keg, sandbag, stone</source>
        <translation>tronco, barril, saco de arena, piedra</translation>
    </message>
    <message>
        <source>carries</source>
        <translation>acarreos</translation>
    </message>
    <message>
        <source>sled</source>
        <translation>trineo</translation>
    </message>
    <message>
        <source>kettlebells</source>
        <translation>pesas rusas</translation>
    </message>
    <message>
        <source>isometric test</source>
        <translation>prueba isométrica</translation>
    </message>
    <message>
        <source>jumps and landings</source>
        <translation>saltos y caídas</translation>
    </message>
    <message>
        <source>throws</source>
        <translation>lanzamientos</translation>
    </message>
    <message>
        <source>something a newer app knows</source>
        <translation>algo que conoce una aplicación más nueva</translation>
    </message>
    <message>
        <source>squats</source>
        <translation>sentadillas</translation>
    </message>
    <message>
        <source>lifts bent at the hip</source>
        <translation>ejercicios con flexión de cadera</translation>
    </message>
    <message>
        <source>presses</source>
        <translation>empujes</translation>
    </message>
    <message>
        <source>arm pulls</source>
        <translation>tirones de brazos</translation>
    </message>
    <message>
        <source>explosive lifts</source>
        <translation>ejercicios explosivos</translation>
    </message>
    <message>
        <source>one-leg lifts</source>
        <translation>ejercicios a una pierna</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>some</source>
        <translation>algo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Nobody knows whether she may</source>
        <translation>Nadie sabe si puede</translation>
    </message>
    <message>
        <source>For nobody: no clearance is looked at.</source>
        <translation>Para nadie: no se mira ninguna autorización.</translation>
    </message>
    <message>
        <source>Nothing in her day status, clearances, age and maximum stands against it.</source>
        <translation>Nada en su estado del día, autorizaciones, edad y máximo está en contra.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Before it is ready: %1</source>
        <translation>Antes de estar listo: %1</translation>
    </message>
    <message>
        <source>A proven overhead lift comes first.</source>
        <translation>Primero, un ejercicio seguro por encima de la cabeza.</translation>
    </message>
    <message>
        <source>Room above and around; nobody within reach of the bar.</source>
        <translation>Sitio arriba y alrededor; nadie al alcance de la barra.</translation>
    </message>
    <message>
        <source>She knows how to get out from under it.</source>
        <translation>Sabe cómo salir de debajo.</translation>
    </message>
    <message>
        <source>Warm, screened and supervised.</source>
        <translation>En caliente, con revisión previa y supervisión.</translation>
    </message>
    <message>
        <source>Safeties set, a spotter at each end.</source>
        <translation>Barras de seguridad puestas, un ayudante en cada extremo.</translation>
    </message>
    <message>
        <source>Stop for pain, dizziness, chest pain, sudden headache or numbness.</source>
        <translation>Parar si hay dolor, mareo, dolor de pecho, dolor de cabeza repentino o entumecimiento.</translation>
    </message>
    <message>
        <source>She breathes, and builds up the pull.</source>
        <translation>Respira y va aumentando la tracción.</translation>
    </message>
    <message>
        <source>Rehearse with empty hooks, a spotter at each end.</source>
        <translation>Ensayar con los ganchos vacíos, un ayudante en cada extremo.</translation>
    </message>
    <message>
        <source>If one side stays on: do not press, ride to the safeties.</source>
        <translation>Si un lado no se suelta: no empujar, bajar a las barras de seguridad.</translation>
    </message>
    <message>
        <source>Safeties tried with an empty bar.</source>
        <translation>Barras de seguridad probadas con la barra vacía.</translation>
    </message>
    <message>
        <source>Flat back to the ground, no curled arms.</source>
        <translation>Espalda recta hasta el suelo, brazos sin doblar.</translation>
    </message>
    <message>
        <source>Look for wire; drain it.</source>
        <translation>Buscar alambres; vaciarla.</translation>
    </message>
    <message>
        <source>Clear fall zone, spotters.</source>
        <translation>Zona de caída libre, ayudantes.</translation>
    </message>
    <message>
        <source>A keg under pressure is never opened or dropped.</source>
        <translation>Un barril con presión nunca se abre ni se deja caer.</translation>
    </message>
    <message>
        <source>Clear room to let it fall.</source>
        <translation>Sitio libre para dejarlo caer.</translation>
    </message>
    <message>
        <source>Feet clear of it.</source>
        <translation>Los pies lejos de él.</translation>
    </message>
    <message>
        <source>Clear lane, level ground.</source>
        <translation>Pista libre, suelo llano.</translation>
    </message>
    <message>
        <source>Stop when posture goes.</source>
        <translation>Parar cuando se pierda la postura.</translation>
    </message>
    <message>
        <source>Look at the kit and the place first.</source>
        <translation>Mira primero el material y el sitio.</translation>
    </message>
</context>
<context>
    <name>gatetexts::Saying</name>
    <message>
        <source>somebody</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>%1 set it on %2, until %3.</source>
        <translation>%1 lo puso el %2, hasta el %3.</translation>
    </message>
    <message>
        <source>%1 set it on %2.</source>
        <translation>%1 lo puso el %2.</translation>
    </message>
    <message>
        <source>“%1” %2</source>
        <translation>«%1» %2</translation>
    </message>
    <message>
        <source>deadlift</source>
        <translation>el peso muerto</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>el ejercicio</translation>
    </message>
    <message>
        <source>May be under age: %1</source>
        <translation>Puede ser menor de edad: %1</translation>
    </message>
    <message>
        <source>A clearance for it with this lift, given knowing her age, settles it. Local rules go before.</source>
        <translation>Una autorización para eso con este ejercicio, dada sabiendo su edad, lo resuelve. Las normas locales van antes.</translation>
    </message>
    <message>
        <source>Age not known: %1</source>
        <translation>Edad desconocida: %1</translation>
    </message>
    <message>
        <source>Enter her birth year; or a clearance for it with this lift, given knowing that she may be under age, settles it.</source>
        <translation>Escribe su año de nacimiento; o lo resuelve una autorización para eso con este ejercicio, dada sabiendo que puede ser menor.</translation>
    </message>
    <message>
        <source>Nobody knows whether the load keeps to the limit</source>
        <translation>Nadie sabe si la carga respeta el límite</translation>
    </message>
    <message>
        <source>Measure what hangs along her whole way, then it is known.</source>
        <translation>Mide lo que cuelga en todo su recorrido; entonces se sabrá.</translation>
    </message>
    <message>
        <source>Clearance is given by whoever is licensed or responsible here.</source>
        <translation>La autorización la da quien esté habilitado o sea responsable aquí.</translation>
    </message>
    <message>
        <source>Clearance is over: %1</source>
        <translation>Autorización vencida: %1</translation>
    </message>
    <message>
        <source>%1 gave it, until %2.</source>
        <translation>%1 la dio, hasta el %2.</translation>
    </message>
    <message>
        <source>Clearance was taken back: %1</source>
        <translation>Autorización retirada: %1</translation>
    </message>
    <message>
        <source>%1 took it back on %2.</source>
        <translation>%1 la retiró el %2.</translation>
    </message>
    <message>
        <source>Cleared only from %2 on: %1</source>
        <translation>Con autorización solo desde el %2: %1</translation>
    </message>
    <message>
        <source>%1 gave it. Wait until then, or have it put right.</source>
        <translation>%1 la dio. Espera hasta entonces, o haz que se corrija.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>Sin autorización: %1</translation>
    </message>
    <message>
        <source>Nobody has cleared her for it with this lift.</source>
        <translation>Nadie la ha autorizado para eso con este ejercicio.</translation>
    </message>
    <message>
        <source>Whoever set it lifts it.</source>
        <translation>Quien lo puso lo levanta.</translation>
    </message>
    <message>
        <source>She does not train now</source>
        <translation>Ahora no entrena</translation>
    </message>
    <message>
        <source>this lift</source>
        <translation>este ejercicio</translation>
    </message>
    <message>
        <source>Not now: %1</source>
        <translation>Ahora no: %1</translation>
    </message>
    <message>
        <source>It may be one of what she is kept from now</source>
        <translation>Puede ser de lo que ahora no debe hacer</translation>
    </message>
    <message>
        <source>Nobody has said which lift this one is like. Say so where the lift was added, then it is known.</source>
        <translation>Nadie ha dicho a qué ejercicio se parece este. Dilo donde se añadió; entonces se sabrá.</translation>
    </message>
    <message>
        <source>Something is said of her now</source>
        <translation>Ahora hay algo dicho sobre ella</translation>
    </message>
    <message>
        <source>A newer app has set what she may do now</source>
        <translation>Una aplicación más nueva ha puesto lo que ahora puede hacer</translation>
    </message>
    <message>
        <source>What it forbids cannot be read here. Update the app, or ask whoever set it.</source>
        <translation>Lo que prohíbe no se puede leer aquí. Actualiza la aplicación, o pregunta a quien lo puso.</translation>
    </message>
    <message>
        <source>Her maximum was not lifted with plain iron</source>
        <translation>Su máximo no se levantó solo con hierro</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate the plain %2: it says how steady she is.</source>
        <translation>Es del %1. Prueba o estima %2 solo con hierro: dice lo firme que está.</translation>
    </message>
    <message>
        <source>Her maximum is too old to go by</source>
        <translation>Su máximo es demasiado viejo para guiarse por él</translation>
    </message>
    <message>
        <source>It is of %1 and counted until %2. Test or estimate the plain %3 again.</source>
        <translation>Es del %1 y valía hasta el %2. Prueba o estima otra vez %3 solo con hierro.</translation>
    </message>
    <message>
        <source>No maximum of hers is known</source>
        <translation>No se conoce ningún máximo suyo</translation>
    </message>
    <message>
        <source>Test or estimate the plain %1 first: percent is of that, and it says how steady she is.</source>
        <translation>Prueba o estima primero %1 solo con hierro: el porcentaje es de eso, y dice lo firme que está.</translation>
    </message>
    <message>
        <source>tested on %1</source>
        <translation>probado el %1</translation>
    </message>
    <message>
        <source>estimated from %1</source>
        <translation>estimado del %1</translation>
    </message>
    <message>
        <source>%1 at the worst place would do.</source>
        <translation>%1 en el peor punto valdría.</translation>
    </message>
    <message>
        <source>No load would do.</source>
        <translation>Ninguna carga valdría.</translation>
    </message>
    <message>
        <source>Over the limit of %1 of her maximum</source>
        <translation>Por encima del límite de %1 de su máximo</translation>
    </message>
    <message>
        <source>At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2).</source>
        <translation>En el peor punto, contado el margen, llega a %1 de la estimación más baja (%2).</translation>
    </message>
    <message>
        <source>As much as her maximum, or more</source>
        <translation>Tanto como su máximo, o más</translation>
    </message>
    <message>
        <source>At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2): a maximal lift. Warm, screened, supervised.</source>
        <translation>En el peor punto, contado el margen, llega a %1 de la estimación más baja (%2): una carga máxima. En caliente, con revisión previa y supervisión.</translation>
    </message>
</context>
<context>
    <name>implementform</name>
    <message>
        <source>Water in it</source>
        <translation>Agua dentro</translation>
    </message>
    <message>
        <source>drained, none left</source>
        <translation>vaciada, ya no queda</translation>
    </message>
    <message>
        <source>not looked yet</source>
        <translation>aún sin mirar</translation>
    </message>
    <message>
        <source>The tape was laid</source>
        <translation>La cinta se puso</translation>
    </message>
    <message>
        <source>across its ends</source>
        <translation>a través de sus extremos</translation>
    </message>
    <message>
        <source>round it</source>
        <translation>alrededor</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Madera</translation>
    </message>
    <message>
        <source>spruce, fir, pine</source>
        <translation>pícea, abeto, pino</translation>
    </message>
    <message>
        <source>oak, beech, ash</source>
        <translation>roble, haya, fresno</translation>
    </message>
    <message>
        <source>It has lain</source>
        <translation>Ha estado</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>en interior</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>bajo techo</translation>
    </message>
    <message>
        <source>across it</source>
        <translation>de lado a lado</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Hecha de</translation>
    </message>
    <message>
        <source>granite</source>
        <translation>granito</translation>
    </message>
    <message>
        <source>limestone</source>
        <translation>caliza</translation>
    </message>
    <message>
        <source>sandstone</source>
        <translation>arenisca</translation>
    </message>
    <message>
        <source>concrete</source>
        <translation>hormigón</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>a keg</source>
        <translation>un barril</translation>
    </message>
    <message>
        <source>a sandbag</source>
        <translation>un saco de arena</translation>
    </message>
    <message>
        <source>Filled with</source>
        <translation>Relleno</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>dry sand</source>
        <translation>arena seca</translation>
    </message>
    <message>
        <source>wet sand</source>
        <translation>arena mojada</translation>
    </message>
    <message>
        <source>lead shot</source>
        <translation>perdigones de plomo</translation>
    </message>
    <message>
        <source>rubber crumb</source>
        <translation>granulado de goma</translation>
    </message>
    <message>
        <source>Gas in it</source>
        <translation>Gas dentro</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>nadie lo sabe</translation>
    </message>
    <message>
        <source>it holds gas</source>
        <translation>tiene gas</translation>
    </message>
    <message>
        <source>let off by whoever may</source>
        <translation>soltado por quien puede</translation>
    </message>
    <message>
        <source>a pair of handles</source>
        <translation>un par de asas</translation>
    </message>
    <message>
        <source>one handle</source>
        <translation>un asa</translation>
    </message>
    <message>
        <source>a hex bar</source>
        <translation>una barra hexagonal</translation>
    </message>
    <message>
        <source>a yoke</source>
        <translation>un yugo</translation>
    </message>
    <message>
        <source>a frame</source>
        <translation>un marco</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>sin probar</translation>
    </message>
    <message>
        <source>it fits</source>
        <translation>se ajusta</translation>
    </message>
    <message>
        <source>it does not fit</source>
        <translation>no se ajusta</translation>
    </message>
    <message>
        <source>a kettlebell</source>
        <translation>una pesa rusa</translation>
    </message>
    <message>
        <source>a dumbbell</source>
        <translation>una mancuerna</translation>
    </message>
    <message>
        <source>Tried with one hand</source>
        <translation>Probada con una mano</translation>
    </message>
    <message>
        <source>Tried with two, little fingers on the horns</source>
        <translation>Probada con dos, meñiques en los cuernos</translation>
    </message>
    <message>
        <source>with nothing else on it</source>
        <translation>sin nada más</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>counts where nobody has weighed it, 2 % either way</source>
        <translation>cuenta si nadie lo ha pesado, 2 % en más o en menos</translation>
    </message>
    <message>
        <source>The figure on it. Weighing it is surer.</source>
        <translation>La cifra que lleva. Pesarlo es más fiable.</translation>
    </message>
    <message>
        <source>Only where the hook held further in than it rests.</source>
        <translation>Solo si el gancho sujetó más adentro de donde se apoya.</translation>
    </message>
    <message>
        <source>One end</source>
        <translation>Un extremo</translation>
    </message>
    <message>
        <source>just off the ground</source>
        <translation>apenas despegado del suelo</translation>
    </message>
    <message>
        <source>Lift one end a hand&apos;s breadth by the scale, the rope upright, the other end on the ground.</source>
        <translation>Levanta un extremo un palmo con la báscula, la cuerda vertical, el otro extremo en el suelo.</translation>
    </message>
    <message>
        <source>The other end</source>
        <translation>El otro extremo</translation>
    </message>
    <message>
        <source>Then the other end likewise. The two add up, however the mass lies along it.</source>
        <translation>Después, el otro extremo igual. Los dos se suman, se reparta como se reparta la masa a lo largo.</translation>
    </message>
    <message>
        <source>From rest to rest</source>
        <translation>De apoyo a apoyo</translation>
    </message>
    <message>
        <source>only where the hook held further in</source>
        <translation>solo si el gancho sujetó más adentro</translation>
    </message>
    <message>
        <source>Hook further in, one end</source>
        <translation>Gancho más adentro, un extremo</translation>
    </message>
    <message>
        <source>from where it rests</source>
        <translation>desde donde se apoya</translation>
    </message>
    <message>
        <source>Hook further in, other end</source>
        <translation>Gancho más adentro, otro extremo</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>La báscula indica</translation>
    </message>
    <message>
        <source>Edge %1 reads</source>
        <translation>El borde %1 indica</translation>
    </message>
    <message>
        <source>one edge just off the ground</source>
        <translation>un borde apenas despegado del suelo</translation>
    </message>
    <message>
        <source>Hook under one edge, lift it a finger&apos;s breadth, the rope upright. Feet and hands clear.</source>
        <translation>Gancho bajo un borde, levántalo el ancho de un dedo, la cuerda vertical. Pies y manos, apartados.</translation>
    </message>
    <message>
        <source>Middle to hook</source>
        <translation>Del centro al gancho</translation>
    </message>
    <message>
        <source>Middle to hook, edge %1</source>
        <translation>Del centro al gancho, borde %1</translation>
    </message>
    <message>
        <source>level, from the middle of the tyre</source>
        <translation>en horizontal, desde el centro de la rueda</translation>
    </message>
    <message>
        <source>From the middle of the tyre to where the hook holds, level.</source>
        <translation>Del centro de la rueda a donde sujeta el gancho, en horizontal.</translation>
    </message>
    <message>
        <source>Middle to far ring</source>
        <translation>Del centro al anillo lejano</translation>
    </message>
    <message>
        <source>Middle to far ring, edge %1</source>
        <translation>Del centro al anillo lejano, borde %1</translation>
    </message>
    <message>
        <source>the ring that it lies on, far side</source>
        <translation>el anillo en que se apoya, lado lejano</translation>
    </message>
    <message>
        <source>From the middle to the far side of the ring that it lies on: narrower than the tyre itself.</source>
        <translation>Del centro al lado lejano del anillo en que se apoya: más estrecho que la rueda misma.</translation>
    </message>
    <message>
        <source>Hung whole, clear of the ground, nobody under it. Never more than scale and hook are made for.</source>
        <translation>Colgada entera, sin tocar el suelo, nadie debajo. Nunca más de lo que admiten la báscula y el gancho.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>for the force of a flip</source>
        <translation>para la fuerza de un volteo</translation>
    </message>
    <message>
        <source>Across the whole tyre.</source>
        <translation>De lado a lado de toda la rueda.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>how high it lies</source>
        <translation>la altura tumbada</translation>
    </message>
    <message>
        <source>From the ground to its upper side.</source>
        <translation>Del suelo a su lado superior.</translation>
    </message>
    <message>
        <source>Round one end</source>
        <translation>Contorno de un extremo</translation>
    </message>
    <message>
        <source>Across one end</source>
        <translation>Diámetro de un extremo</translation>
    </message>
    <message>
        <source>Round the other end</source>
        <translation>Contorno del otro extremo</translation>
    </message>
    <message>
        <source>Across the other end</source>
        <translation>Diámetro del otro extremo</translation>
    </message>
    <message>
        <source>A tape laid round it, without bark if it comes off.</source>
        <translation>La cinta métrica alrededor, sin corteza si se desprende.</translation>
    </message>
    <message>
        <source>Mean of two ways across, without bark if it comes off.</source>
        <translation>Media de dos diámetros cruzados, sin corteza si se desprende.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>of the wood</source>
        <translation>de la madera</translation>
    </message>
    <message>
        <source>From end to end.</source>
        <translation>De extremo a extremo.</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Gravedad específica</translation>
    </message>
    <message>
        <source>of the wood; spruce 0.40, oak 0.60</source>
        <translation>de la madera; pícea 0,40, roble 0,60</translation>
    </message>
    <message>
        <source>Dry mass over its volume as it is now; pieces of one species differ by a tenth.</source>
        <translation>Masa seca entre su volumen actual; las piezas de una especie difieren en una décima parte.</translation>
    </message>
    <message>
        <source>× water</source>
        <translation>× agua</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>in per cent of its dry mass</source>
        <translation>en porcentaje de su masa seca</translation>
    </message>
    <message>
        <source>12 indoors, 18 under a roof. Wet or fresh wood: weigh it by both ends instead.</source>
        <translation>12 en interior, 18 bajo techo. Madera mojada o fresca: mejor pésala por los dos extremos.</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Hung level, clear of the ground.</source>
        <translation>Colgado nivelado, sin tocar el suelo.</translation>
    </message>
    <message>
        <source>Round it</source>
        <translation>Contorno</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>where it is widest</source>
        <translation>donde es más ancha</translation>
    </message>
    <message>
        <source>Mean of three ways. A centimetre in thirty is a tenth of its mass.</source>
        <translation>Media en tres direcciones. Un centímetro de cada treinta es una décima parte de su masa.</translation>
    </message>
    <message>
        <source>In a sling, or stood on a scale.</source>
        <translation>En una eslinga, o puesta sobre una báscula.</translation>
    </message>
    <message>
        <source>As it will be lifted, with what is in it.</source>
        <translation>Tal como se va a levantar, con lo que lleva dentro.</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Vacío</translation>
    </message>
    <message>
        <source>weighed with nothing in it</source>
        <translation>pesado sin nada dentro</translation>
    </message>
    <message>
        <source>The bag alone.</source>
        <translation>El saco solo.</translation>
    </message>
    <message>
        <source>Weigh an empty one of the same make: kegs differ.</source>
        <translation>Pesa uno vacío del mismo modelo: los barriles varían.</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Dentro</translation>
    </message>
    <message>
        <source>litres, as poured</source>
        <translation>litros, según se vertieron</translation>
    </message>
    <message>
        <source>Count the cans or jugs that go in, or pour it out into them.</source>
        <translation>Cuenta los bidones o jarras que entran, o vacíalo en ellos.</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>How deep</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>standing upright</source>
        <translation>de pie</translation>
    </message>
    <message>
        <source>Dip a stick down to the bottom and read how far it is wet.</source>
        <translation>Mete un palo hasta el fondo y lee hasta dónde se moja.</translation>
    </message>
    <message>
        <source>Across, inside</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Outside less twice the wall.</source>
        <translation>Por fuera, menos dos veces la pared.</translation>
    </message>
    <message>
        <source>lying, in the middle</source>
        <translation>tumbado, en el centro</translation>
    </message>
    <message>
        <source>Lying, a third of the depth is not a third of what is in it: that is worked out.</source>
        <translation>Tumbado, un tercio de la profundidad no es un tercio de lo que contiene: eso se calcula.</translation>
    </message>
    <message>
        <source>Length, inside</source>
        <translation>Longitud interior</translation>
    </message>
    <message>
        <source>From end to end inside. Where its litres are printed on it, give them instead.</source>
        <translation>De extremo a extremo por dentro. Si lleva impresos los litros, indica mejor esos.</translation>
    </message>
    <message>
        <source>Holds, full</source>
        <translation>Capacidad, lleno</translation>
    </message>
    <message>
        <source>litres, as printed on it</source>
        <translation>litros, como lo lleva impreso</translation>
    </message>
    <message>
        <source>As printed on it: then no length is needed.</source>
        <translation>Como lo lleva impreso: entonces no hace falta la longitud.</translation>
    </message>
    <message>
        <source>The sled alone, with its strap.</source>
        <translation>El trineo solo, con su correa.</translation>
    </message>
    <message>
        <source>Strap</source>
        <translation>Correa</translation>
    </message>
    <message>
        <source>hook to belt</source>
        <translation>del gancho al cinturón</translation>
    </message>
    <message>
        <source>Pulled straight, from the sled&apos;s hook to her belt.</source>
        <translation>Tirante, del gancho del trineo a su cinturón.</translation>
    </message>
    <message>
        <source>Its hook</source>
        <translation>Su gancho</translation>
    </message>
    <message>
        <source>above the ground</source>
        <translation>sobre el suelo</translation>
    </message>
    <message>
        <source>With her belt&apos;s height it says how steep the strap pulls.</source>
        <translation>Con la altura de su cinturón dice con qué inclinación tira la correa.</translation>
    </message>
    <message>
        <source>One of them reads</source>
        <translation>Una de ellas indica</translation>
    </message>
    <message>
        <source>One handle with nothing on it; the other is taken for its like.</source>
        <translation>Un asa sin nada puesto; la otra se toma por igual.</translation>
    </message>
    <message>
        <source>With nothing on it.</source>
        <translation>Sin nada puesto.</translation>
    </message>
    <message>
        <source>Many are off their mark by more than a plate would be.</source>
        <translation>Muchas se desvían de su marca más que un disco.</translation>
    </message>
    <message>
        <source>Can be set to</source>
        <translation>Se puede ajustar a</translation>
    </message>
    <message>
        <source>and to</source>
        <translation>y a</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Ajustada a</translation>
    </message>
    <message>
        <source>only of one with changeable masses</source>
        <translation>solo si su masa se puede cambiar</translation>
    </message>
    <message>
        <source>as marked, 2 % either way</source>
        <translation>según la marca, 2 % en más o en menos</translation>
    </message>
    <message>
        <source>Each mass that it can be set to, as it is marked.</source>
        <translation>Cada masa a la que se puede ajustar, según la marca.</translation>
    </message>
    <message>
        <source>Handle, thick</source>
        <translation>Asa, grosor</translation>
    </message>
    <message>
        <source>for whoever chooses</source>
        <translation>para quien elige</translation>
    </message>
    <message>
        <source>Across the handle where the hand holds it.</source>
        <translation>A través del asa, donde la sujeta la mano.</translation>
    </message>
    <message>
        <source>Window, wide</source>
        <translation>Ventana, ancho</translation>
    </message>
    <message>
        <source>from horn to horn</source>
        <translation>de cuerno a cuerno</translation>
    </message>
    <message>
        <source>Inside, from horn to horn.</source>
        <translation>Por dentro, de cuerno a cuerno.</translation>
    </message>
    <message>
        <source>The opposite edge too</source>
        <translation>También el borde opuesto</translation>
    </message>
    <message>
        <source>whole, on a scale</source>
        <translation>entero, en una báscula</translation>
    </message>
    <message>
        <source>by litres</source>
        <translation>por litros</translation>
    </message>
    <message>
        <source>by its level, standing</source>
        <translation>por su nivel, de pie</translation>
    </message>
    <message>
        <source>by its level, lying</source>
        <translation>por su nivel, tumbado</translation>
    </message>
    <message>
        <source>surest</source>
        <translation>lo más fiable</translation>
    </message>
    <message>
        <source>what was poured in</source>
        <translation>lo que se vertió</translation>
    </message>
    <message>
        <source>a stick and a tape</source>
        <translation>un palo y una cinta métrica</translation>
    </message>
    <message>
        <source>on the list, and given to nobody</source>
        <translation>en la lista, para nadie</translation>
    </message>
    <message>
        <source>Measure a tyre</source>
        <translation>Medir una rueda</translation>
    </message>
    <message>
        <source>Look for wire that shows and drain it first: water is weighed too, and runs. Clear the ground it could fall on. Twice what an edge reads is too little, the unsafe side: the lever says the rest.</source>
        <translation>Primero busca alambre a la vista y vacíala: el agua también pesa, y se mueve. Despeja el suelo donde podría caer. El doble de lo que indica un borde es demasiado poco, el lado inseguro: el resto lo dice la palanca.</translation>
    </message>
    <message>
        <source>one edge lifted</source>
        <translation>un borde levantado</translation>
    </message>
    <message>
        <source>a hanging scale and a tape</source>
        <translation>una báscula colgante y una cinta métrica</translation>
    </message>
    <message>
        <source>Measure a log</source>
        <translation>Medir un tronco</translation>
    </message>
    <message>
        <source>Each end on a scale, one after the other, is surer than size and wood. Look for splits and loose handles; feet clear of it.</source>
        <translation>Cada extremo en una báscula, uno tras otro, es más fiable que medidas y madera. Busca rajas y asas sueltas; los pies, lejos de él.</translation>
    </message>
    <message>
        <source>each end on a scale</source>
        <translation>cada extremo en una báscula</translation>
    </message>
    <message>
        <source>by size and wood</source>
        <translation>por medidas y madera</translation>
    </message>
    <message>
        <source>however its mass lies</source>
        <translation>se reparta como se reparta su masa</translation>
    </message>
    <message>
        <source>a tape, and what wood it is</source>
        <translation>una cinta métrica, y qué madera es</translation>
    </message>
    <message>
        <source>Measure a stone</source>
        <translation>Medir una piedra</translation>
    </message>
    <message>
        <source>On a scale where one holds it. By its size a centimetre in thirty is a tenth of its mass.</source>
        <translation>En una báscula, si hay una que la aguante. Por su tamaño, un centímetro de cada treinta es una décima parte de su masa.</translation>
    </message>
    <message>
        <source>by its size</source>
        <translation>por su tamaño</translation>
    </message>
    <message>
        <source>a tape, and what it is made of</source>
        <translation>una cinta métrica, y de qué está hecha</translation>
    </message>
    <message>
        <source>Measure a keg or sandbag</source>
        <translation>Medir un barril o saco de arena</translation>
    </message>
    <message>
        <source>Never open or drop a keg that may hold gas: whoever owns it lets it off. One of which nobody knows is not used.</source>
        <translation>Nunca abras ni dejes caer un barril que pueda tener gas: lo suelta quien sea su dueño. Uno del que nadie lo sabe no se usa.</translation>
    </message>
    <message>
        <source>Measure a sled</source>
        <translation>Medir un trineo</translation>
    </message>
    <message>
        <source>What it weighs, and how its strap pulls. How it slides is measured on the spot, on each surface.</source>
        <translation>Lo que pesa, y cómo tira su correa. Cómo desliza se mide en el sitio, en cada superficie.</translation>
    </message>
    <message>
        <source>Measure what is carried by</source>
        <translation>Medir asas, yugo o marco</translation>
    </message>
    <message>
        <source>Handles, a yoke or a bar weigh something themselves, and it is carried too. Look at welds and collars.</source>
        <translation>Las asas, un yugo o una barra también pesan, y eso se lleva igual. Mira las soldaduras y los cierres.</translation>
    </message>
    <message>
        <source>Measure a kettlebell or dumbbell</source>
        <translation>Medir una pesa rusa o mancuerna</translation>
    </message>
    <message>
        <source>The right mass can be the wrong thing in the hand: whether it sits is tried, not worked out.</source>
        <translation>La masa correcta puede ser lo equivocado en la mano: si se ajusta se prueba, no se calcula.</translation>
    </message>
    <message>
        <source>Warn of, in words</source>
        <translation>Avisar de, con palabras</translation>
    </message>
    <message>
        <source>Its mass</source>
        <translation>Su masa</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
</context>
<context>
    <name>implementtexts</name>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>a mass anywhere within a step shows the same: step / √12</source>
        <translation>una masa en cualquier punto de un escalón muestra lo mismo: escalón / √12</translation>
    </message>
    <message>
        <source>The scale&apos;s own error</source>
        <translation>El error propio de la báscula</translation>
    </message>
    <message>
        <source>as far as it was off when it was checked, either way: error / √3</source>
        <translation>lo que se desviaba al comprobarla, en más o en menos: error / √3</translation>
    </message>
    <message>
        <source>Mark on it</source>
        <translation>Su marca</translation>
    </message>
    <message>
        <source>up to 2 % out, either way, until it is weighed (our choice)</source>
        <translation>hasta un 2 % de error, en ambos sentidos, hasta que se pese (elección nuestra)</translation>
    </message>
    <message>
        <source>Lift point</source>
        <translation>Punto de enganche</translation>
    </message>
    <message>
        <source>from the middle to the hook, read to a centimetre (our choice)</source>
        <translation>del centro al gancho, leído al centímetro (elección nuestra)</translation>
    </message>
    <message>
        <source>Far contact</source>
        <translation>Apoyo lejano</translation>
    </message>
    <message>
        <source>from the middle to the far side of the ring it rests on, read to a centimetre (our choice)</source>
        <translation>del centro al lado lejano del anillo en que se apoya, leído al centímetro (elección nuestra)</translation>
    </message>
    <message>
        <source>Where it rests and where the hook holds</source>
        <translation>Dónde se apoya y dónde sujeta el gancho</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice)</source>
        <translation>leída al centímetro (decisión nuestra)</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>tape read to a centimetre (our choice)</source>
        <translation>cinta leída al centímetro (elección nuestra)</translation>
    </message>
    <message>
        <source>Specific gravity of the wood</source>
        <translation>Gravedad específica de la madera</translation>
    </message>
    <message>
        <source>pieces of one species differ by 10 % (Wood Handbook, FPL-GTR-190, from memory)</source>
        <translation>las piezas de una especie difieren un 10 % (Wood Handbook, FPL-GTR-190, de memoria)</translation>
    </message>
    <message>
        <source>Moisture of the wood</source>
        <translation>Humedad de la madera</translation>
    </message>
    <message>
        <source>known to 3 % of its dry mass (our choice)</source>
        <translation>conocida hasta un 3 % de su masa seca (elección nuestra)</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>anywhere between the two ends of its range</source>
        <translation>en cualquier punto entre los dos extremos de su intervalo</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Litros</translation>
    </message>
    <message>
        <source>up to 2 % out, either way (our choice)</source>
        <translation>hasta un 2 % de error, en ambos sentidos (elección nuestra)</translation>
    </message>
    <message>
        <source>Depth of the filling</source>
        <translation>Profundidad del relleno</translation>
    </message>
    <message>
        <source>a tyre</source>
        <translation>una rueda</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>un tronco</translation>
    </message>
    <message>
        <source>a stone</source>
        <translation>una piedra</translation>
    </message>
    <message>
        <source>a keg or sandbag</source>
        <translation>un barril o saco de arena</translation>
    </message>
    <message>
        <source>a sled</source>
        <translation>un trineo</translation>
    </message>
    <message>
        <source>handles, a yoke or a frame</source>
        <translation>asas, un yugo o un marco</translation>
    </message>
    <message>
        <source>a kettlebell or dumbbell</source>
        <translation>una pesa rusa o mancuerna</translation>
    </message>
    <message>
        <source>Not measured yet.</source>
        <translation>Aún sin medir.</translation>
    </message>
    <message>
        <source>Nobody knows what it weighs: weigh it before anybody lifts it.</source>
        <translation>Nadie sabe cuánto pesa: pésalo antes de que alguien lo levante.</translation>
    </message>
    <message>
        <source>Water in it is weighed too, and runs: drain it, then weigh it.</source>
        <translation>El agua de dentro también pesa, y se mueve: vacíalo y luego pésalo.</translation>
    </message>
    <message>
        <source>What the scale shows is wanting: read it.</source>
        <translation>Falta lo que marca la báscula: léelo.</translation>
    </message>
    <message>
        <source>The step of the scale is wanting: say it.</source>
        <translation>Falta el escalón de la báscula: indícalo.</translation>
    </message>
    <message>
        <source>Where it was lifted or where it rests is wanting: read both from the middle.</source>
        <translation>Falta dónde se levantó o dónde se apoya: lee ambos desde el centro.</translation>
    </message>
    <message>
        <source>A size is wanting: read it with a tape.</source>
        <translation>Falta una medida: léela con una cinta.</translation>
    </message>
    <message>
        <source>The wood is wanting: say its specific gravity and how moist it is.</source>
        <translation>Falta la madera: indica su gravedad específica y su humedad.</translation>
    </message>
    <message>
        <source>What it is made of is wanting: say its density, or weigh it.</source>
        <translation>Falta de qué está hecho: indica su densidad o pésalo.</translation>
    </message>
    <message>
        <source>What is in it is wanting: say it, or weigh all of it.</source>
        <translation>Falta qué contiene: indícalo o pésalo entero.</translation>
    </message>
    <message>
        <source>What it weighs empty is wanting: weigh an empty one, or weigh all of it.</source>
        <translation>Falta cuánto pesa vacío: pesa uno vacío o pésalo entero.</translation>
    </message>
    <message>
        <source>How much is in it is wanting: say how many litres or how deep, or weigh all of it.</source>
        <translation>Falta cuánto contiene: indica los litros o la profundidad, o pésalo entero.</translation>
    </message>
    <message>
        <source>Its numbers cannot be right: look at them again.</source>
        <translation>Sus números no pueden ser correctos: revísalos.</translation>
    </message>
    <message>
        <source>%1 each, by the mark</source>
        <translation>%1 cada una, según la marca</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 cada una</translation>
    </message>
    <message>
        <source>%1 to %2, by the mark</source>
        <translation>%1 a %2, según la marca</translation>
    </message>
    <message>
        <source>%1, by the mark</source>
        <translation>%1, según la marca</translation>
    </message>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % de lo que lo hace incierto</translation>
    </message>
    <message>
        <source>What is marked on it; nobody has weighed it.</source>
        <translation>Lo que lleva marcado; nadie lo ha pesado.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Lo que pesa.</translation>
    </message>
    <message>
        <source>What one end weighs and what the other weighs, added up; a hook further in counts by its lever.</source>
        <translation>Lo que pesa un extremo más lo que pesa el otro; un gancho más adentro cuenta según su palanca.</translation>
    </message>
    <message>
        <source>Its volume as a cone cut off at both ends, times the density of its wood when so moist.</source>
        <translation>Su volumen como tronco de cono, por la densidad de su madera con esa humedad.</translation>
    </message>
    <message>
        <source>What one edge weighs, times the whole lever from the far contact to the hook, divided by the lever to the middle. Of two edges the mean.</source>
        <translation>Lo que pesa un borde, por la palanca entera del apoyo lejano al gancho, dividido por la palanca hasta el centro. De dos bordes, la media.</translation>
    </message>
    <message>
        <source>Its volume as a ball, times its density.</source>
        <translation>Su volumen como esfera, por su densidad.</translation>
    </message>
    <message>
        <source>What it weighs empty, and how much is in it times its density.</source>
        <translation>Lo que pesa vacío, más cuánto contiene por su densidad.</translation>
    </message>
    <message>
        <source>Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Escalón de una báscula: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Density of wood: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, chapter 4.</source>
        <translation>Densidad de la madera: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, capítulo 4.</translation>
    </message>
    <message>
        <source>Levers: statics. Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Palancas: estática. Escalón de una báscula: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Volumes: geometry. Ranges: JCGM 100:2008, 4.3.7.</source>
        <translation>Volúmenes: geometría. Intervalos: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Sandbag</source>
        <translation>Saco de arena</translation>
    </message>
    <message>
        <source>Keg</source>
        <translation>Barril</translation>
    </message>
    <message>
        <source>Dumbbell</source>
        <translation>Mancuerna</translation>
    </message>
    <message>
        <source>Kettlebell</source>
        <translation>Pesa rusa</translation>
    </message>
    <message>
        <source>Handles</source>
        <translation>Asas</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Asa</translation>
    </message>
    <message>
        <source>Hex bar</source>
        <translation>Barra hexagonal</translation>
    </message>
    <message>
        <source>Yoke</source>
        <translation>Yugo</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Marco</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Tronco</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>Piedra</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Trineo</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>Rueda</translation>
    </message>
    <message>
        <source>mass not known</source>
        <translation>masa desconocida</translation>
    </message>
</context>
<context>
    <name>itemorigintexts</name>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n lectura</numerusform>
            <numerusform>%n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>taken as it was read</source>
        <translation>se toma tal como se leyó</translation>
    </message>
    <message>
        <source>%1 more changes nothing to speak of</source>
        <translation>%1 más no cambia nada apreciable</translation>
    </message>
    <message>
        <source>%1 more makes it %2 % less</source>
        <translation>con %1 más sale un %2 % menos</translation>
    </message>
    <message>
        <source>%1 more makes it %2 % more</source>
        <translation>con %1 más sale un %2 % más</translation>
    </message>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % de lo que lo hace incierto</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Escalón de la báscula</translation>
    </message>
    <message>
        <source>a mass anywhere within a step shows the same: step / √12</source>
        <translation>una masa en cualquier punto de un escalón muestra lo mismo: escalón / √12</translation>
    </message>
    <message>
        <source>The scale&apos;s own error</source>
        <translation>El error propio de la báscula</translation>
    </message>
    <message>
        <source>as far as it was off when it was checked, either way: error / √3</source>
        <translation>lo que se desviaba al comprobarla, en más o en menos: error / √3</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>all of it, on the scale</source>
        <translation>entera, en la báscula</translation>
    </message>
    <message>
        <source>as sure as the scale</source>
        <translation>tan fiable como la báscula</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Alambre</translation>
    </message>
    <message>
        <source>its real thickness</source>
        <translation>su grosor real</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>inside length of one link</source>
        <translation>largo interior de un eslabón</translation>
    </message>
    <message>
        <source>Inner width</source>
        <translation>Ancho interior</translation>
    </message>
    <message>
        <source>inside width of one link</source>
        <translation>ancho interior de un eslabón</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>first link to last, pulled straight</source>
        <translation>del primer eslabón al último, estirada recta</translation>
    </message>
    <message>
        <source>says how much of it there is, not what a length of it weighs</source>
        <translation>dice cuánta hay, no lo que pesa un tramo</translation>
    </message>
    <message>
        <source>Gauging itself</source>
        <translation>El calibrado en sí</translation>
    </message>
    <message>
        <source>what tables print differs by as much from this formula</source>
        <translation>lo que dan las tablas difiere otro tanto de esta fórmula</translation>
    </message>
    <message>
        <source>± 3 %</source>
        <translation>± 3 %</translation>
    </message>
    <message>
        <source>first link to last, pulled straight; taken as it was read</source>
        <translation>del primer eslabón al último, estirada recta; se toma tal como se leyó</translation>
    </message>
    <message>
        <source>Known plates hung on it</source>
        <translation>Discos conocidos colgados</translation>
    </message>
    <message>
        <source>how far the readings lie off the curve says how sure it is; the plates count as they are marked</source>
        <translation>cuánto se apartan las lecturas de la curva dice lo fiable que es; los discos cuentan por su marca</translation>
    </message>
    <message>
        <source>So few readings</source>
        <translation>Tan pocas lecturas</translation>
    </message>
    <message>
        <source>a curve through a handful looks surer than it is, so so much at least (our choice)</source>
        <translation>una curva con un puñado de lecturas parece más fiable de lo que es; por eso, al menos esto (decisión nuestra)</translation>
    </message>
    <message>
        <source>± 5 %</source>
        <translation>± 5 %</translation>
    </message>
    <message>
        <source>Length at rest</source>
        <translation>Longitud en reposo</translation>
    </message>
    <message>
        <source>unloaded, laid straight; taken as it was read</source>
        <translation>sin carga, extendida recta; se toma tal como se leyó</translation>
    </message>
    <message>
        <source>Known plates resting on it</source>
        <translation>Discos conocidos apoyados</translation>
    </message>
    <message>
        <source>marked and not weighed: 2 % either way (our choice)</source>
        <translation>con marca y sin pesar: 2 % en más o en menos (decisión nuestra)</translation>
    </message>
    <message>
        <source>Height above the chest</source>
        <translation>Altura sobre el pecho</translation>
    </message>
    <message>
        <source>the bar stood there to a centimetre (our choice), times how steeply the help falls</source>
        <translation>la barra estaba ahí con un centímetro de precisión (decisión nuestra), multiplicado por lo rápido que cae la ayuda</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pila de pesas</translation>
    </message>
    <message>
        <source>by its mark, which nobody weighed: 2 % either way (our choice)</source>
        <translation>según lo que lleva marcado, que nadie ha pesado: 2 % en más o en menos (decisión nuestra)</translation>
    </message>
    <message>
        <source>Radius there</source>
        <translation>Radio ahí</translation>
    </message>
    <message>
        <source>from the axis square to the cable, read to %1 (our choice). %2</source>
        <translation>del eje al cable, en perpendicular, leído con precisión de %1 (decisión nuestra). %2</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>read to a degree (our choice), times how fast the radius changes there</source>
        <translation>leído al grado (decisión nuestra), multiplicado por lo rápido que cambia ahí el radio</translation>
    </message>
    <message>
        <source>What the scale read</source>
        <translation>Lo que indicó la báscula</translation>
    </message>
    <message>
        <source>a pull anywhere within a step of %1 shows the same: step / √12; stack %2</source>
        <translation>una tracción en cualquier punto de un escalón de %1 muestra lo mismo: escalón / √12; pila de pesas %2</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>how far the handle came, to a centimetre (our choice), times how fast the pull changes there</source>
        <translation>hasta dónde llegó la empuñadura, al centímetro (decisión nuestra), multiplicado por lo rápido que cambia ahí la tracción</translation>
    </message>
    <message>
        <source>Known mass</source>
        <translation>Masa conocida</translation>
    </message>
    <message>
        <source>counts as it is said to be</source>
        <translation>cuenta por lo que se dice que pesa</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Empty it showed</source>
        <translation>Vacía mostró</translation>
    </message>
    <message>
        <source>to a step of %1: step / √12</source>
        <translation>con escalón de %1: escalón / √12</translation>
    </message>
    <message>
        <source>With it, it showed</source>
        <translation>Con la masa mostró</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la báscula</translation>
    </message>
    <message>
        <source>all of them together</source>
        <translation>todo el conjunto</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>la pieza entera</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>each counts as a like part of them</source>
        <translation>cada pieza cuenta como una parte igual</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contada</translation>
    </message>
    <message>
        <source>Mark on it</source>
        <translation>Su marca</translation>
    </message>
    <message>
        <source>just what it weighs</source>
        <translation>justo lo que pesa</translation>
    </message>
    <message>
        <source>it weighs %1 more</source>
        <translation>pesa %1 más</translation>
    </message>
    <message>
        <source>it weighs %1 less</source>
        <translation>pesa %1 menos</translation>
    </message>
    <message>
        <source>does not count: the scale does</source>
        <translation>no cuenta: cuenta la báscula</translation>
    </message>
    <message>
        <source>from where it holds the bar to where the chain hangs, read to a centimetre (our choice)</source>
        <translation>desde donde sujeta la barra hasta donde cuelga la cadena, leída al centímetro (decisión nuestra)</translation>
    </message>
    <message>
        <source>with its hooks; hangs at every height; taken as it was read</source>
        <translation>con sus ganchos; cuelga a todas las alturas; se toma tal como se leyó</translation>
    </message>
    <message>
        <source>was not weighed, and counts as nothing</source>
        <translation>no se pesó y cuenta como cero</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>says nothing of its length</source>
        <translation>no dice nada de su longitud</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice)</source>
        <translation>leída al centímetro (decisión nuestra)</translation>
    </message>
    <message>
        <source>Lowest hole</source>
        <translation>Agujero más bajo</translation>
    </message>
    <message>
        <source>from the floor to the middle of a bar that lies there, %1. %2</source>
        <translation>del suelo al centro de una barra apoyada ahí, %1. %2</translation>
    </message>
    <message>
        <source>From hole to hole</source>
        <translation>De agujero a agujero</translation>
    </message>
    <message>
        <source>taken as it was read; best over many holes at once</source>
        <translation>se toma tal como se leyó; mejor sobre muchos agujeros a la vez</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anclaje</translation>
    </message>
    <message>
        <source>from the floor, %1</source>
        <translation>desde el suelo, %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 N·m at %2</source>
        <translation>%1 N·m a %2</translation>
    </message>
    <message>
        <source>%1 too little at %2</source>
        <translation>%1 de menos con %2</translation>
    </message>
    <message>
        <source>%1 too much at %2</source>
        <translation>%1 de más con %2</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 por pieza</translation>
    </message>
    <message>
        <source>hole %1 at %2</source>
        <translation>agujero %1 a %2</translation>
    </message>
    <message>
        <source>anchor at %1</source>
        <translation>anclaje a %1</translation>
    </message>
    <message>
        <source>A straight line from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>Una recta desde su longitud en reposo, ajustada por mínimos cuadrados a lo que tiró con discos conocidos.</translation>
    </message>
    <message>
        <source>A bent line from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>Una línea curvada desde su longitud en reposo, ajustada por mínimos cuadrados a lo que tiró con discos conocidos.</translation>
    </message>
    <message>
        <source>The curve of rubber from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>La curva de la goma desde su longitud en reposo, ajustada por mínimos cuadrados a lo que tiró con discos conocidos.</translation>
    </message>
    <message>
        <source>The height of the anchor as it was read, from the floor.</source>
        <translation>La altura del anclaje tal como se leyó, desde el suelo.</translation>
    </message>
    <message>
        <source>The height of its only hole as it was read, from the floor.</source>
        <translation>La altura de su único agujero tal como se leyó, desde el suelo.</translation>
    </message>
    <message>
        <source>The height of the lowest hole, and from there as many times from hole to hole: %1.</source>
        <translation>La altura del agujero más bajo y, desde ahí, tantas veces de agujero a agujero: %1.</translation>
    </message>
    <message>
        <source>%1 + %2 × %3 = %4</source>
        <translation>%1 + %2 × %3 = %4</translation>
    </message>
    <message>
        <source>What the steel of one link weighs, by its wire, pitch and inner width, divided by its pitch.</source>
        <translation>Lo que pesa el acero de un eslabón, según su alambre, paso y ancho interior, dividido entre su paso.</translation>
    </message>
    <message>
        <source>What it weighs, divided by its length.</source>
        <translation>Lo que pesa, dividido entre su longitud.</translation>
    </message>
    <message>
        <source>A smooth curve through what it carried, which never rises with height; here where it helps most.</source>
        <translation>Una curva suave por lo que soportó, que nunca sube con la altura; aquí, donde más ayuda.</translation>
    </message>
    <message>
        <source>What the stack weighs, times the radius of the cam at the angle where it is greatest. Friction is left out.</source>
        <translation>Lo que pesa la pila de pesas, multiplicado por el radio de la leva en el ángulo donde es mayor. La fricción no se cuenta.</translation>
    </message>
    <message>
        <source>A smooth curve through what the scale read along its way; here where it pulls most. Friction is in it, as it was pulled.</source>
        <translation>Una curva suave por lo que indicó la báscula a lo largo del recorrido; aquí, donde más tira. La fricción va incluida, tal como se tiró.</translation>
    </message>
    <message>
        <source>What it showed with a known mass, less what it showed empty, less the mass; here where it was furthest off. What is weighed on it counts as up to %1 out.</source>
        <translation>Lo que mostró con una masa conocida, menos lo que mostró vacía, menos la masa; aquí, donde más se desvió. Lo que se pese en ella cuenta con hasta %1 de error.</translation>
    </message>
    <message>
        <source>What they weigh together, divided by how many there are.</source>
        <translation>Lo que pesan juntas, dividido entre cuántas son.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Lo que pesa.</translation>
    </message>
    <message>
        <source>Its length as it was read. A set-up takes it so.</source>
        <translation>Su longitud tal como se leyó. Un montaje la toma así.</translation>
    </message>
    <message>
        <source>Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Escalón de una báscula: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Density of steel: EN 1991-1-1. Chain tables: DIN 766, DIN 763, EN 818-7.</source>
        <translation>Densidad del acero: EN 1991-1-1. Tablas de cadenas: DIN 766, DIN 763, EN 818-7.</translation>
    </message>
    <message>
        <source>Bent line: loop bands, McMaster, Cronin and McGuigan 2010.</source>
        <translation>Línea curvada: bandas cerradas, McMaster, Cronin y McGuigan 2010.</translation>
    </message>
    <message>
        <source>Curve of rubber: Mooney 1940, Rivlin 1948.</source>
        <translation>Curva de la goma: Mooney 1940, Rivlin 1948.</translation>
    </message>
    <message>
        <source>Curve: Fritsch and Butland 1984.</source>
        <translation>Curva: Fritsch y Butland 1984.</translation>
    </message>
    <message>
        <source>Weight times radius: statics; standard gravity: CGPM 1901.</source>
        <translation>Peso por radio: estática; gravedad estándar: CGPM 1901.</translation>
    </message>
    <message>
        <source>A few more readings would make it surer.</source>
        <translation>Unas pocas lecturas más lo harían más fiable.</translation>
    </message>
    <message>
        <source>Plates that were weighed would make it surer.</source>
        <translation>Pesar los discos lo haría más fiable.</translation>
    </message>
    <message>
        <source>Weighing the stack&apos;s plates would make it surer.</source>
        <translation>Pesar las placas de la pila de pesas lo haría más fiable.</translation>
    </message>
    <message>
        <source>Reading the radius finer would make it surer.</source>
        <translation>Leer el radio con más detalle lo haría más fiable.</translation>
    </message>
    <message>
        <source>A scale with a finer step would make it surer.</source>
        <translation>Una báscula con un escalón más fino lo haría más fiable.</translation>
    </message>
    <message>
        <source>A scale that is less far out would make it surer.</source>
        <translation>Una báscula que se desvíe menos lo haría más fiable.</translation>
    </message>
    <message>
        <source>What one end weighs and what the other weighs, added up.</source>
        <translation>Lo que pesa un extremo más lo que pesa el otro.</translation>
    </message>
</context>
<context>
    <name>keepingtexts</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>somebody taken out</source>
        <translation>una persona quitada</translation>
    </message>
    <message>
        <source>out of use, %1</source>
        <translation>fuera de uso, %1</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>fuera de uso</translation>
    </message>
    <message>
        <source>borrowed %1</source>
        <translation>tomado en préstamo: %1</translation>
    </message>
    <message>
        <source>borrowed it</source>
        <translation>tomado en préstamo</translation>
    </message>
    <message>
        <source>lent %1</source>
        <translation>prestado: %1</translation>
    </message>
    <message>
        <source>lent it</source>
        <translation>prestado</translation>
    </message>
    <message>
        <source>back again, %1</source>
        <translation>devuelto, %1</translation>
    </message>
    <message>
        <source>back again</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>looked over, %1</source>
        <translation>revisado, %1</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>revisado</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>ejercicio %1</translation>
    </message>
    <message>
        <source>a lift taken out</source>
        <translation>un ejercicio quitado</translation>
    </message>
    <message>
        <source>kept %1</source>
        <translation>guardado: %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>kept body mass or height</source>
        <translation>guardado: masa corporal o estatura</translation>
    </message>
    <message>
        <source>kept set-up: %1</source>
        <translation>montaje guardado: %1</translation>
    </message>
    <message>
        <source>kept a set-up</source>
        <translation>montaje guardado</translation>
    </message>
    <message>
        <source>changed units</source>
        <translation>unidades cambiadas</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>resuelto</translation>
    </message>
    <message>
        <source>took kit along: %1</source>
        <translation>material llevado: %1</translation>
    </message>
    <message>
        <source>took kit along</source>
        <translation>material llevado</translation>
    </message>
    <message>
        <source>copied a list: %1</source>
        <translation>lista copiada: %1</translation>
    </message>
    <message>
        <source>copied a list</source>
        <translation>lista copiada</translation>
    </message>
    <message>
        <source>kept a test of strength</source>
        <translation>prueba de fuerza guardada</translation>
    </message>
    <message>
        <source>gave a clearance</source>
        <translation>autorización dada</translation>
    </message>
    <message>
        <source>took a clearance back</source>
        <translation>autorización retirada</translation>
    </message>
    <message>
        <source>set a day status</source>
        <translation>estado del día puesto</translation>
    </message>
    <message>
        <source>lifted a day status</source>
        <translation>estado del día levantado</translation>
    </message>
    <message>
        <source>changed limits</source>
        <translation>límites cambiados</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day as the language writes it: d, MMM and yyyy stand for day, month and year</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>kept an isometric pull</source>
        <translation>tracción isométrica guardada</translation>
    </message>
    <message>
        <source>A name is missing.</source>
        <translation>Falta un nombre.</translation>
    </message>
    <message>
        <source>Type one, then keep it.</source>
        <translation>Escribe uno y guárdalo.</translation>
    </message>
    <message>
        <source>That text is too long.</source>
        <translation>Ese texto es demasiado largo.</translation>
    </message>
    <message>
        <source>Make it shorter, then keep it.</source>
        <translation>Acórtalo y guárdalo.</translation>
    </message>
    <message>
        <source>That text cannot be read.</source>
        <translation>Ese texto no se puede leer.</translation>
    </message>
    <message>
        <source>Type it again, then keep it.</source>
        <translation>Escríbelo de nuevo y guárdalo.</translation>
    </message>
    <message>
        <source>That birth year cannot be right.</source>
        <translation>Ese año de nacimiento no puede ser.</translation>
    </message>
    <message>
        <source>It lies before 1900 or still to come: type it again, or leave it out.</source>
        <translation>Es anterior a 1900 o aún no ha llegado: tecléalo de nuevo u omítelo.</translation>
    </message>
    <message>
        <source>The birth year comes first.</source>
        <translation>Primero va el año de nacimiento.</translation>
    </message>
    <message>
        <source>Without it nobody knows whether a guardian has to agree.</source>
        <translation>Sin él nadie sabe si hace falta el permiso de los padres.</translation>
    </message>
    <message>
        <source>A guardian has to agree first.</source>
        <translation>Primero hace falta el permiso de los padres.</translation>
    </message>
    <message>
        <source>Until then only name, squad and loads are kept. Record who agreed, then keep it.</source>
        <translation>Hasta entonces solo se guardan nombre, plantel y cargas. Anota quién dio el permiso y guárdalo.</translation>
    </message>
    <message>
        <source>The agreement is not complete.</source>
        <translation>El permiso no está completo.</translation>
    </message>
    <message>
        <source>Say who agreed; its day cannot lie ahead.</source>
        <translation>Di quién dio el permiso; su fecha no puede ser futura.</translation>
    </message>
    <message>
        <source>A number there cannot be right.</source>
        <translation>Ahí hay un número que no puede ser.</translation>
    </message>
    <message>
        <source>Type it again, or leave it out.</source>
        <translation>Tecléalo de nuevo u omítelo.</translation>
    </message>
    <message>
        <source>Nothing was measured.</source>
        <translation>No se midió nada.</translation>
    </message>
    <message>
        <source>Enter body mass or height, then keep it.</source>
        <translation>Anota la masa corporal o la estatura y guárdala.</translation>
    </message>
    <message>
        <source>Those reps do not go together.</source>
        <translation>Esas repeticiones no encajan.</translation>
    </message>
    <message>
        <source>A missed rep leaves none in reserve, and a maximum is one rep. Count them again, then keep it.</source>
        <translation>Tras una fallada no queda ninguna en reserva, y un máximo es una repetición. Cuéntalas de nuevo y guárdalo.</translation>
    </message>
    <message>
        <source>Nobody is named.</source>
        <translation>No se nombra a nadie.</translation>
    </message>
    <message>
        <source>Say who gave or set it, then keep it.</source>
        <translation>Di quién lo dio o lo puso y guárdalo.</translation>
    </message>
    <message>
        <source>It would end before it begins.</source>
        <translation>Terminaría antes de empezar.</translation>
    </message>
    <message>
        <source>Put a later last day, or none.</source>
        <translation>Pon un último día posterior, o ninguno.</translation>
    </message>
    <message>
        <source>What may be done and what not do not go together.</source>
        <translation>Lo que se puede y lo que no no encaja.</translation>
    </message>
    <message>
        <source>Some: say what not, or why. All or none: name nothing.</source>
        <translation>Algo: di qué no, o por qué. Todo o nada: no nombres nada.</translation>
    </message>
    <message>
        <source>No limit can lie there.</source>
        <translation>Ahí no puede haber un límite.</translation>
    </message>
    <message>
        <source>Put another number, or leave it to ours.</source>
        <translation>Pon otro número o deja el nuestro.</translation>
    </message>
    <message>
        <source>That day lies ahead.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
    <message>
        <source>Put the day on which it was measured, then keep it.</source>
        <translation>Pon el día en que se midió y guárdalo.</translation>
    </message>
    <message>
        <source>It is the only measurement.</source>
        <translation>Es la única medición.</translation>
    </message>
    <message>
        <source>Measure the thing again first, or take the thing itself out of the kit.</source>
        <translation>Mide antes la pieza de nuevo, o quita del material la pieza misma.</translation>
    </message>
    <message>
        <source>This athlete is not in the squad any more.</source>
        <translation>Esta persona ya no está en el plantel.</translation>
    </message>
    <message>
        <source>Add the person anew, or undo the taking out.</source>
        <translation>Añádela de nuevo, o deshaz el cambio que la quitó.</translation>
    </message>
    <message>
        <source>This venue is not there any more.</source>
        <translation>Este lugar ya no está.</translation>
    </message>
    <message>
        <source>Choose another venue, then keep it.</source>
        <translation>Elige otro lugar y guárdalo.</translation>
    </message>
    <message>
        <source>This thing is not in the kit any more.</source>
        <translation>Esta pieza ya no está en el material.</translation>
    </message>
    <message>
        <source>Measure it anew, or undo the taking out.</source>
        <translation>Mídela de nuevo, o deshaz el cambio que la quitó.</translation>
    </message>
    <message>
        <source>This set-up is not there any more.</source>
        <translation>Este montaje ya no está.</translation>
    </message>
    <message>
        <source>Keep it as a new one.</source>
        <translation>Guárdalo como uno nuevo.</translation>
    </message>
    <message>
        <source>It is not said for which lift.</source>
        <translation>No se dice para qué ejercicio es.</translation>
    </message>
    <message>
        <source>Choose the athlete and the lift first, then keep it.</source>
        <translation>Elige primero atleta y ejercicio, y guárdalo.</translation>
    </message>
    <message>
        <source>That is not there any more.</source>
        <translation>Eso ya no está.</translation>
    </message>
    <message>
        <source>Look at the list again.</source>
        <translation>Mira la lista de nuevo.</translation>
    </message>
    <message>
        <source>That was said before.</source>
        <translation>Eso ya está dicho.</translation>
    </message>
    <message>
        <source>Nothing more is needed.</source>
        <translation>No hace falta nada más.</translation>
    </message>
    <message>
        <source>Not kept: this is the example, and everybody knows its passphrase.</source>
        <translation>No guardado: esto es el ejemplo, y su frase de acceso la conoce todo el mundo.</translation>
    </message>
    <message>
        <source>It takes no names or notes of yours. Start a vault of your own for your people: remove the example in Preferences.</source>
        <translation>No admite nombres ni notas tuyos. Crea una caja fuerte propia para tu gente: quita el ejemplo en Preferencias.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>The list holds the last 20 of this session.</source>
        <translation>La lista tiene los últimos 20 de esta sesión.</translation>
    </message>
    <message>
        <source>Something newer stands there.</source>
        <translation>Ahí hay algo más nuevo.</translation>
    </message>
    <message>
        <source>Undo that first; it is further up in the list.</source>
        <translation>Deshaz eso primero; está más arriba en la lista.</translation>
    </message>
    <message>
        <source>Kept, with the last space there was.</source>
        <translation>Guardado, con el último espacio que había.</translation>
    </message>
    <message>
        <source>This device is full. Free some space now, or the next entry cannot be kept.</source>
        <translation>Este dispositivo está lleno. Libera espacio ya, o la próxima entrada no se podrá guardar.</translation>
    </message>
    <message>
        <source>changed what loads are held against: %1</source>
        <translation>cambiado con qué se comparan las cargas: %1</translation>
    </message>
    <message>
        <source>changed what loads are held against</source>
        <translation>cambiado con qué se comparan las cargas</translation>
    </message>
    <message>
        <source>kept how a sled slides</source>
        <translation>guardado cómo desliza un trineo</translation>
    </message>
    <message>
        <source>kept a timed run with a sled</source>
        <translation>guardada una carrera cronometrada con un trineo</translation>
    </message>
    <message>
        <source>A sled has to be pulled with two different loads, or more.</source>
        <translation>Hay que tirar de un trineo con dos cargas distintas o más.</translation>
    </message>
    <message>
        <source>Pull it once more with another load.</source>
        <translation>Tira de él otra vez con otra carga.</translation>
    </message>
</context>
<context>
    <name>lifts</name>
    <message>
        <source>back squat</source>
        <translation>sentadilla</translation>
    </message>
    <message>
        <source>front squat</source>
        <translation>sentadilla frontal</translation>
    </message>
    <message>
        <source>split squat</source>
        <translation>sentadilla dividida</translation>
    </message>
    <message>
        <source>single-leg squat</source>
        <translation>sentadilla a una pierna</translation>
    </message>
    <message>
        <source>step-up</source>
        <translation>subida al cajón</translation>
    </message>
    <message>
        <source>bench press</source>
        <translation>press de banca</translation>
    </message>
    <message>
        <source>incline press</source>
        <translation>press inclinado</translation>
    </message>
    <message>
        <source>overhead press</source>
        <translation>press por encima de la cabeza</translation>
    </message>
    <message>
        <source>push press</source>
        <translation>press con impulso</translation>
    </message>
    <message>
        <source>bent-over row</source>
        <translation>remo inclinado</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>dominada</translation>
    </message>
    <message>
        <source>chin-up</source>
        <translation>dominada supina</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>fondos</translation>
    </message>
    <message>
        <source>deadlift</source>
        <translation>peso muerto</translation>
    </message>
    <message>
        <source>hex-bar deadlift</source>
        <translation>peso muerto con barra hexagonal</translation>
    </message>
    <message>
        <source>Romanian deadlift</source>
        <translation>peso muerto rumano</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>empuje de cadera</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>cargada</translation>
    </message>
    <message>
        <source>jerk</source>
        <translation>envión</translation>
    </message>
    <message>
        <source>snatch</source>
        <translation>arrancada</translation>
    </message>
    <message>
        <source>clean pull</source>
        <translation>tirón de cargada</translation>
    </message>
    <message>
        <source>snatch pull</source>
        <translation>tirón de arrancada</translation>
    </message>
    <message>
        <source>leg press, two legs</source>
        <translation>prensa a dos piernas</translation>
    </message>
    <message>
        <source>leg press, one leg</source>
        <translation>prensa a una pierna</translation>
    </message>
    <message>
        <source>isometric squat</source>
        <translation>sentadilla isométrica</translation>
    </message>
    <message>
        <source>isometric mid-thigh pull</source>
        <translation>tirón isométrico a medio muslo</translation>
    </message>
    <message>
        <source>kettlebell swing</source>
        <translation>swing con kettlebell</translation>
    </message>
    <message>
        <source>kettlebell clean</source>
        <translation>cargada con kettlebell</translation>
    </message>
    <message>
        <source>kettlebell press</source>
        <translation>press con kettlebell</translation>
    </message>
    <message>
        <source>log clean and press</source>
        <translation>cargada y press con tronco</translation>
    </message>
    <message>
        <source>keg press</source>
        <translation>press con barril</translation>
    </message>
    <message>
        <source>tyre flip</source>
        <translation>volteo de neumático</translation>
    </message>
    <message>
        <source>farmer&apos;s carry</source>
        <translation>paseo del granjero</translation>
    </message>
    <message>
        <source>suitcase carry</source>
        <translation>paseo de maleta</translation>
    </message>
    <message>
        <source>yoke carry</source>
        <translation>paseo con yugo</translation>
    </message>
    <message>
        <source>front carry</source>
        <translation>paseo frontal</translation>
    </message>
    <message>
        <source>overhead carry</source>
        <translation>paseo por encima de la cabeza</translation>
    </message>
    <message>
        <source>sled tow</source>
        <translation>arrastre de trineo</translation>
    </message>
    <message>
        <source>sled push</source>
        <translation>empuje de trineo</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>salto</translation>
    </message>
    <message>
        <source>medicine-ball throw</source>
        <translation>lanzamiento de balón medicinal</translation>
    </message>
</context>
<context>
    <name>limittexts</name>
    <message>
        <source>Tyre</source>
        <translation>Rueda</translation>
    </message>
    <message>
        <source>On the way down</source>
        <translation>En la bajada</translation>
    </message>
    <message>
        <source>A maximum counts for</source>
        <translation>Un máximo vale</translation>
    </message>
    <message>
        <source>A band&apos;s measurement is fresh for</source>
        <translation>La medición de una banda está fresca</translation>
    </message>
    <message>
        <source>An anchor is held by</source>
        <translation>Un anclaje se sujeta con</translation>
    </message>
    <message>
        <source>Of age</source>
        <translation>Mayor de edad</translation>
    </message>
    <message>
        <source>of the lowest estimate of her deadlift, the tyre&apos;s give-or-take counted in</source>
        <translation>de la estimación más baja de su peso muerto, contado el margen de la rueda</translation>
    </message>
    <message>
        <source>of the lowest estimate of her maximum, at its worst place</source>
        <translation>de la estimación más baja de su máximo, en el peor punto</translation>
    </message>
    <message>
        <source>after that it is tested or estimated again</source>
        <translation>después se vuelve a probar o estimar</translation>
    </message>
    <message>
        <source>after that what is uncertain of its pull counts half as much again</source>
        <translation>después lo incierto de su tracción cuenta la mitad más</translation>
    </message>
    <message>
        <source>the greatest pull on it; with less the load is not to be lifted</source>
        <translation>la mayor tracción sobre él; con menos la carga no se levanta</translation>
    </message>
    <message>
        <source>before it maximal lifts, eccentric overload and tyres need an approval by name</source>
        <translation>antes, las cargas máximas, la sobrecarga excéntrica y las ruedas piden una aprobación con nombre</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1 veces</translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n año</numerusform>
            <numerusform>%n años</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lookovertexts</name>
    <message>
        <source>Every link, held slack: worn where links meet, bent, open, cracked or stretched; a hook or carabiner that does not close. Chain slings are put away once a link has lost a tenth of its thickness (EN 818-6, annex A, from memory).</source>
        <translation>Cada eslabón, sujeto sin tensión: gastado donde se tocan los eslabones, doblado, abierto, agrietado o estirado; un gancho o mosquetón que no cierra. Las eslingas de cadena se retiran en cuanto un eslabón ha perdido una décima parte de su grosor (EN 818-6, anexo A, de memoria).</translation>
    </message>
    <message>
        <source>All of it, stretched by hand to arm&apos;s length, face turned away: a cut, a crack, a thin place, rubber that is sticky or has gone white (common practice, no source).</source>
        <translation>Entera, estirada a mano hasta el largo del brazo, con la cara apartada: un corte, una grieta, una zona fina, goma pegajosa o blanqueada (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>All round, stretched by hand: a cut, a thin place, rubber that is sticky or has gone white, a seam that gives (common practice, no source).</source>
        <translation>Todo alrededor, estirada a mano: un corte, una zona fina, goma pegajosa o blanqueada, una costura que cede (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>The cable along its whole way: a broken strand, a bulge, a torn sleeve. The pin: bent, or not all the way in. Welds and bolts: a crack, a gap (common practice, no source). Keep fingers out of the stack.</source>
        <translation>El cable en todo su recorrido: un hilo roto, un bulto, una funda rasgada. El pasador: doblado o no metido hasta el fondo. Soldaduras y tornillos: una grieta, una separación (práctica habitual, sin fuente). No metas los dedos en la pila de pesas.</translation>
    </message>
    <message>
        <source>A minute with nothing on it: a zero that runs away. Its hooks: bent or open. Dropped or overloaded since it was checked (common practice, no source): check it with a known mass before it counts again.</source>
        <translation>Un minuto sin nada encima: un cero que se va. Sus ganchos: doblados o abiertos. Si se cayó o se sobrecargó desde que se comprobó (práctica habitual, sin fuente): compruébala con una masa conocida antes de que vuelva a contar.</translation>
    </message>
    <message>
        <source>Plates: a crack at the hole or the rim. Bar: bent, a sleeve that sticks. Collars: worn, sliding (common practice, no source).</source>
        <translation>Discos: una grieta en el agujero o en el borde. Barra: doblada, una manga que se atasca. Cierres: gastados, que resbalan (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>The whole length, both faces: a cut, a frayed edge, stitching that has come loose; a buckle that slips, a hook that does not close (common practice, no source).</source>
        <translation>Todo el largo, por las dos caras: un corte, un borde deshilachado, una costura que se ha soltado; una hebilla que resbala, un gancho que no cierra (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>Pins and safeties: bent, or not all the way through. Holes pulled long. Welds, feet and bolts: a crack, a gap, anything that rocks (common practice, no source).</source>
        <translation>Pasadores y barras de seguridad: doblados, o que no atraviesan del todo. Agujeros alargados. Soldaduras, patas y tornillos: una grieta, una separación, cualquier cosa que baile (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>worn link</source>
        <translation>eslabón gastado</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>bent or open link</source>
        <translation>eslabón doblado o abierto</translation>
    </message>
    <message>
        <source>hook bent or open</source>
        <translation>gancho doblado o abierto</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>grieta</translation>
    </message>
    <message>
        <source>sticky or gone white</source>
        <translation>pegajosa o blanqueada</translation>
    </message>
    <message>
        <source>loose seam</source>
        <translation>costura suelta</translation>
    </message>
    <message>
        <source>frayed cable</source>
        <translation>cable deshilachado</translation>
    </message>
    <message>
        <source>bent or loose pin</source>
        <translation>pasador doblado o suelto</translation>
    </message>
    <message>
        <source>zero runs away</source>
        <translation>el cero se va</translation>
    </message>
    <message>
        <source>was dropped</source>
        <translation>se cayó</translation>
    </message>
    <message>
        <source>worn collar</source>
        <translation>cierre gastado</translation>
    </message>
    <message>
        <source>slipping buckle</source>
        <translation>hebilla que resbala</translation>
    </message>
    <message>
        <source>cracked weld</source>
        <translation>soldadura agrietada</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>All round: wire that shows, a tear or a bulge in a sidewall, glass or nails in the tread; water that is left in it (common practice, no source).</source>
        <translation>Todo alrededor: alambre a la vista, un desgarro o un bulto en el costado, cristales o clavos en el dibujo; agua que quede dentro (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>All of it: a split, rot, a nail that stands out; handles that move (common practice, no source).</source>
        <translation>Entero: una raja, podredumbre, un clavo que sobresale; asas que se mueven (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>All round: a crack, an edge that cuts, a face that flakes (common practice, no source).</source>
        <translation>Todo alrededor: una grieta, un borde que corta, una cara que se desconcha (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>A keg: whether it still holds gas, by whoever brought it; never open or drop one under pressure. Its valve, welds and rims: a leak, a dent, an edge that cuts. A bag: seams and handles (common practice, no source).</source>
        <translation>Un barril: si aún tiene gas, según quien lo trajo; nunca abrir ni dejar caer uno con presión. Su válvula, soldaduras y rebordes: una fuga, una abolladura, un borde que corta. Un saco: costuras y asas (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>Runners and welds: a crack, an edge that digs in. Strap, hook and belt: a cut, stitching that has come loose, a hook that does not close (common practice, no source).</source>
        <translation>Patines y soldaduras: una grieta, un borde que se clava. Correa, gancho y cinturón: un corte, una costura suelta, un gancho que no cierra (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>Grips that turn or slide, pins and collars for the plates, welds: a crack, a gap (common practice, no source).</source>
        <translation>Empuñaduras que giran o resbalan, pasadores y cierres de los discos, soldaduras: una grieta, una separación (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>Handle: rough, loose or cracked. What can be set: a lock that does not hold (common practice, no source).</source>
        <translation>Asa: áspera, suelta o agrietada. Lo que se puede ajustar: un bloqueo que no sujeta (práctica habitual, sin fuente).</translation>
    </message>
    <message>
        <source>wire showing</source>
        <translation>alambre a la vista</translation>
    </message>
    <message>
        <source>torn sidewall</source>
        <translation>costado desgarrado</translation>
    </message>
    <message>
        <source>under pressure</source>
        <translation>con presión</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>split</source>
        <translation>raja</translation>
    </message>
    <message>
        <source>loose handle</source>
        <translation>asa suelta</translation>
    </message>
</context>
<context>
    <name>marktexts</name>
    <message>
        <source>hole %1 of a rack</source>
        <translation>agujero %1 de un rack</translation>
    </message>
    <message>
        <source>hole %1 of %2</source>
        <translation>agujero %1 de %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, as the rack was measured then</source>
        <translation>%1, según se midió el rack entonces</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 at %2 by tape</source>
        <translation>%1 a %2 con cinta métrica</translation>
    </message>
    <message>
        <source>bottom by the plates that stand on the floor</source>
        <translation>abajo según los discos apoyados en el suelo</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>apoyo</translation>
    </message>
    <message>
        <source>sticking zone from</source>
        <translation>zona de estancamiento desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
</context>
<context>
    <name>measuretexts</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Since %1: no clear change %2. The difference of %3 is within the give-or-take.</source>
        <translation>Desde el %1: sin cambio claro %2. La diferencia de %3 cabe en la incertidumbre.</translation>
    </message>
    <message>
        <source>Since %1 it helps %2 less %3: more than measuring error.</source>
        <translation>Desde el %1 ayuda %2 menos %3: más que el error de medida.</translation>
    </message>
    <message>
        <source>Since %1 it helps %2 more %3: more than measuring error.</source>
        <translation>Desde el %1 ayuda %2 más %3: más que el error de medida.</translation>
    </message>
    <message>
        <source>Since %1: no clear change at %2. The difference of %3 is within the give-or-take.</source>
        <translation>Desde el %1: sin cambio claro a %2. La diferencia de %3 cabe en la incertidumbre.</translation>
    </message>
    <message>
        <source>Since %1: no clear change. The difference of %2 is within the give-or-take.</source>
        <translation>Desde el %1: sin cambio claro. La diferencia de %2 cabe en la incertidumbre.</translation>
    </message>
    <message>
        <source>Since %1 it pulls %2 less at %3: more than measuring error.</source>
        <translation>Desde el %1 tira %2 menos a %3: más que el error de medida.</translation>
    </message>
    <message>
        <source>Since %1 it pulls %2 more at %3: more than measuring error.</source>
        <translation>Desde el %1 tira %2 más a %3: más que el error de medida.</translation>
    </message>
    <message>
        <source>%1 lighter a foot than on %2: more than measuring error.</source>
        <translation>%1 menos por pie que el %2: más que el error de medida.</translation>
    </message>
    <message>
        <source>%1 heavier a foot than on %2: more than measuring error.</source>
        <translation>%1 más por pie que el %2: más que el error de medida.</translation>
    </message>
    <message>
        <source>%1 lighter a metre than on %2: more than measuring error.</source>
        <translation>%1 menos por metro que el %2: más que el error de medida.</translation>
    </message>
    <message>
        <source>%1 heavier a metre than on %2: more than measuring error.</source>
        <translation>%1 más por metro que el %2: más que el error de medida.</translation>
    </message>
    <message>
        <source>Too close to call: they differ by %1, which is within the give-or-take.</source>
        <translation>Demasiado justo: se diferencian en %1, y eso cabe en la incertidumbre.</translation>
    </message>
    <message>
        <source>It helps %1 less than %2 %3.</source>
        <translation>Ayuda %1 menos que %2 %3.</translation>
    </message>
    <message>
        <source>It helps %1 more than %2 %3.</source>
        <translation>Ayuda %1 más que %2 %3.</translation>
    </message>
    <message>
        <source>It pulls %1 less than %2 at %3.</source>
        <translation>Tira %1 menos que %2 a %3.</translation>
    </message>
    <message>
        <source>It pulls %1 more than %2 at %3.</source>
        <translation>Tira %1 más que %2 a %3.</translation>
    </message>
    <message>
        <source>It weighs %1 less than %2 for its length.</source>
        <translation>Pesa %1 menos que %2 para su longitud.</translation>
    </message>
    <message>
        <source>It weighs %1 more than %2 for its length.</source>
        <translation>Pesa %1 más que %2 para su longitud.</translation>
    </message>
    <message>
        <source>%1 One side would be heavier: find each another partner.</source>
        <translation>%1 Un lado pesaría más: busca otra pareja para cada una.</translation>
    </message>
    <message>
        <source>%1 Close enough for a pair.</source>
        <translation>%1 Lo bastante parecidas para un par.</translation>
    </message>
    <message>
        <source>About %1, to reach %2</source>
        <translation>Cerca de %1, para llegar a %2</translation>
    </message>
    <message>
        <source>As much as brings it to about %1</source>
        <translation>Lo que haga llegar a cerca de %1</translation>
    </message>
    <message numerus="yes">
        <source>Where the shade is wide, %n readings cannot yet tell their own scatter from the curve: one more narrows it most.</source>
        <translation>
            <numerusform>Donde el sombreado es ancho, %n lectura aún no distingue su propia dispersión de la curva: una más es lo que más lo estrecha.</numerusform>
            <numerusform>Donde el sombreado es ancho, %n lecturas aún no distinguen su propia dispersión de la curva: una más es lo que más lo estrecha.</numerusform>
        </translation>
    </message>
    <message>
        <source>Three lengths, spread out, make a curve.</source>
        <translation>Tres longitudes, bien repartidas, forman una curva.</translation>
    </message>
    <message>
        <source>You use it to %1; so far it is read only to %2.</source>
        <translation>La usas hasta %1; por ahora solo está leída hasta %2.</translation>
    </message>
    <message>
        <source>You use it to %1.</source>
        <translation>La usas hasta %1.</translation>
    </message>
    <message>
        <source>There the curve is least sure.</source>
        <translation>Ahí es donde menos fiable es la curva.</translation>
    </message>
    <message>
        <source>While taking off it pulls %1 less at %2. What counts is the way up.</source>
        <translation>Al descargar tira %1 menos a %2. Lo que cuenta es la subida.</translation>
    </message>
    <message>
        <source>While taking off it pulls as much at %1.</source>
        <translation>Al descargar tira lo mismo a %1.</translation>
    </message>
    <message>
        <source>measured %1, due again</source>
        <translation>medido %1, toca de nuevo</translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n days</source>
        <translation>
            <numerusform>medido %1, toca mañana</numerusform>
            <numerusform>medido %1, toca en %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n weeks</source>
        <translation>
            <numerusform>medido %1, toca en %n semana</numerusform>
            <numerusform>medido %1, toca en %n semanas</numerusform>
        </translation>
    </message>
    <message>
        <source>out of use since %1: %2</source>
        <translation>fuera de uso desde el %1: %2</translation>
    </message>
    <message>
        <source>out of use since %1: %2, %3</source>
        <translation>fuera de uso desde el %1: %2, %3</translation>
    </message>
    <message>
        <source>Gauged is within 6 %. Weighing it would be surer.</source>
        <translation>Calibrada acierta dentro del 6 %. Pesarla sería más fiable.</translation>
    </message>
    <message>
        <source>The scale is coarse for it: one with a finer step would be surer, or both of a pair on it at once.</source>
        <translation>La báscula es poco fina para esto: sería más fiable una con un escalón más fino, o las dos del par a la vez.</translation>
    </message>
</context>
<context>
    <name>origintexts</name>
    <message>
        <source>what is marked on it, added up</source>
        <translation>lo que lleva marcado, sumado</translation>
    </message>
    <message>
        <source>what is marked on it, added up; nobody has weighed the plates, so 2 % either way (our choice)</source>
        <translation>lo que lleva marcado, sumado; nadie ha pesado los discos, así que 2 % en más o en menos (decisión nuestra)</translation>
    </message>
    <message>
        <source>what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it</source>
        <translation>lo que dijo una báscula y lo que lleva marcado el resto, sumado; una báscula se desvía lo mismo en todo</translation>
    </message>
    <message>
        <source>what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it, and plates that nobody has weighed by 2 % either way (our choice)</source>
        <translation>lo que dijo una báscula y lo que lleva marcado el resto, sumado; una báscula se desvía lo mismo en todo, y los discos que nadie ha pesado, 2 % en más o en menos (decisión nuestra)</translation>
    </message>
    <message>
        <source>what a metre weighs, times the metres that are off the floor; put on a scale</source>
        <translation>lo que pesa un metro, multiplicado por los metros que no tocan el suelo; puesta en una báscula</translation>
    </message>
    <message>
        <source>what a metre weighs, times the metres that are off the floor; by wire, pitch and inner width, 3 % (chain tables differ by as much)</source>
        <translation>lo que pesa un metro, multiplicado por los metros que no tocan el suelo; por alambre, paso y ancho interior, 3 % (las tablas de cadenas difieren otro tanto)</translation>
    </message>
    <message>
        <source>what it pulls at the length it has there, upright; read with known plates on it</source>
        <translation>lo que tira con la longitud que tiene ahí, en vertical; leída con discos conocidos</translation>
    </message>
    <message>
        <source>what it pulls at the length it has there, upright; read with known plates on one of the pair, the other taken for its twin: 3 % more on the length at rest</source>
        <translation>lo que tira con la longitud que tiene ahí, en vertical; leída con discos conocidos en una del par, la otra tomada por su gemela: 3 % más en la longitud en reposo</translation>
    </message>
    <message>
        <source>what it carries at that height over the chest; read with known plates resting on it, 2 % either way for them and a centimetre for the height (our choices)</source>
        <translation>lo que soporta a esa altura sobre el pecho; leída con discos conocidos apoyados, 2 % en más o en menos por ellos y un centímetro por la altura (decisiones nuestras)</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice), times how steeply the pull rises there</source>
        <translation>leída al centímetro (decisión nuestra), multiplicada por lo rápido que sube ahí la tracción</translation>
    </message>
    <message>
        <source>off the rack</source>
        <translation>al sacar del rack</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>sticking zone</source>
        <translation>zona de estancamiento</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>mean of the path</source>
        <translation>media de la trayectoria</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>Bar, collars and plates</source>
        <translation>Barra, cierres y discos</translation>
    </message>
    <message>
        <source>Bar marks</source>
        <translation>Marcas de la barra</translation>
    </message>
    <message>
        <source>nothing to speak of</source>
        <translation>nada apreciable</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>%1. Measured %2</source>
        <translation>%1. Medido %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>No part makes most of the give-or-take.</source>
        <translation>Nada aporta por sí solo la mayor parte de la incertidumbre.</translation>
    </message>
    <message>
        <source>Nothing here is uncertain enough to show.</source>
        <translation>Nada de aquí es tan incierto como para mostrarlo.</translation>
    </message>
    <message>
        <source>The plates make most of the give-or-take. Weigh them.</source>
        <translation>Los discos aportan la mayor parte de la incertidumbre. Pésalos.</translation>
    </message>
    <message>
        <source>The iron makes most of the give-or-take. Weigh it on a finer scale, or a checked one.</source>
        <translation>El hierro aporta la mayor parte de la incertidumbre. Pésalo en una báscula más fina, o en una comprobada.</translation>
    </message>
    <message>
        <source>The iron makes most of the give-or-take. Weigh the rest of the plates.</source>
        <translation>El hierro aporta la mayor parte de la incertidumbre. Pesa el resto de los discos.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Weigh more of it at once, or on a finer scale.</source>
        <translation>%1 aporta la mayor parte de la incertidumbre. Pesa más cantidad a la vez, o en una báscula más fina.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Put it on a scale.</source>
        <translation>%1 aporta la mayor parte de la incertidumbre. Ponla en una báscula.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Hang more plates on it, at more lengths.</source>
        <translation>%1 aporta la mayor parte de la incertidumbre. Cuélgale más discos, con más longitudes.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Measure the other of the pair by itself.</source>
        <translation>%1 aporta la mayor parte de la incertidumbre. Mide por separado la otra del par.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take: it is steep there, and every height counts to a centimetre.</source>
        <translation>%1 aporta la mayor parte de la incertidumbre: ahí cambia muy rápido, y cada altura cuenta al centímetro.</translation>
    </message>
    <message>
        <source>The bar marks make most of the give-or-take. Read them twice, and where she really stops.</source>
        <translation>Las marcas de la barra aportan la mayor parte de la incertidumbre. Léelas dos veces, y donde de verdad se detiene.</translation>
    </message>
</context>
<context>
    <name>readingtexts</name>
    <message>
        <source>at the chest</source>
        <translation>en el pecho</translation>
    </message>
    <message>
        <source>%1 above the chest</source>
        <translation>a %1 sobre el pecho</translation>
    </message>
    <message>
        <source>%1 at the chest</source>
        <translation>%1 en el pecho</translation>
    </message>
    <message>
        <source>%1 at %2 above the chest</source>
        <translation>%1 a %2 sobre el pecho</translation>
    </message>
    <message>
        <source>%1 N·m</source>
        <translation>%1 N·m</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 J</source>
        <translation>%1 J</translation>
    </message>
    <message>
        <source>up to %1 at %2, stack %3</source>
        <translation>hasta %1 a %2, pila de pesas %3</translation>
    </message>
    <message>
        <source>pulls up to %1 at %2, stack %3</source>
        <translation>tira hasta %1 a %2, pila de pesas %3</translation>
    </message>
</context>
<context>
    <name>releasetexts</name>
    <message>
        <source>more than 99 of 100 reps</source>
        <translation>más de 99 de 100 repeticiones</translation>
    </message>
    <message>
        <source>fewer than 1 of 100 reps</source>
        <translation>menos de 1 de 100 repeticiones</translation>
    </message>
    <message>
        <source>%1 of 100 reps</source>
        <translation>%1 de 100 repeticiones</translation>
    </message>
    <message>
        <source>%1 less than asked</source>
        <translation>%1 menos de lo pedido</translation>
    </message>
    <message>
        <source>%1 more than asked</source>
        <translation>%1 más de lo pedido</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>Subida: %1.</translation>
    </message>
    <message>
        <source>Down: %1.</source>
        <translation>Bajada: %1.</translation>
    </message>
    <message>
        <source>%1 % of her 1RM up, %2 % down.</source>
        <translation>%1 % de su 1RM al subir, %2 % al bajar.</translation>
    </message>
    <message>
        <source>The way down is %1 % of the way up.</source>
        <translation>La bajada es el %1 % de la subida.</translation>
    </message>
    <message>
        <source>Each hook: empty, %1</source>
        <translation>Cada gancho: vacío, %1</translation>
    </message>
    <message>
        <source>Each hook: %1, with its frame %2</source>
        <translation>Cada gancho: %1, con su armazón %2</translation>
    </message>
    <message>
        <source>Outside them, lifted off at the bottom: %1, each side %2</source>
        <translation>Por fuera, se quitan abajo: %1, cada lado %2</translation>
    </message>
    <message>
        <source>A partner pushes down with %1 and lets go at the bottom</source>
        <translation>Un compañero empuja hacia abajo con %1 y suelta abajo</translation>
    </message>
    <message>
        <source>A partner pushes down and lets go at the bottom: how hard is not known until it is read on a scale</source>
        <translation>Un compañero empuja hacia abajo y suelta abajo: no se sabe cuánto hasta leerlo en una báscula</translation>
    </message>
    <message>
        <source>The bands that hang below are let go at the bottom, both together</source>
        <translation>Las bandas de abajo se sueltan abajo, las dos a la vez</translation>
    </message>
    <message>
        <source>A dumbbell of %1 in each hand, dropped at the bottom</source>
        <translation>Una mancuerna de %1 en cada mano, se suelta abajo</translation>
    </message>
    <message>
        <source>%1; what was asked takes %2 each</source>
        <translation>%1; lo pedido exige %2 cada una</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Rep %1: nothing is put back within the set, so the first alone is overloaded (common practice).</source>
        <translation>Repetición %1: nada se vuelve a poner en la serie, así que solo la primera va sobrecargada (práctica común).</translation>
    </message>
    <message>
        <source>Reps %1: spotters put it back at the top of each, both sides together.</source>
        <translation>Repeticiones %1: los ayudantes lo vuelven a poner arriba en cada una, los dos lados a la vez.</translation>
    </message>
    <message>
        <source>Reps %1: she puts it back herself, the bar in the rack, in rests of %2 s.</source>
        <translation>Repeticiones %1: lo vuelve a poner ella, con la barra en el rack, en pausas de %2 s.</translation>
    </message>
    <message>
        <source>Reps %1: spotters put it back in rests of %2 s.</source>
        <translation>Repeticiones %1: los ayudantes lo vuelven a poner en pausas de %2 s.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>Down: %1 at the top, %2 just above %3, mean %4.</source>
        <translation>Bajada: %1 arriba, %2 justo por encima de %3, media %4.</translation>
    </message>
    <message>
        <source>Down: not known.</source>
        <translation>Bajada: no se sabe.</translation>
    </message>
    <message>
        <source>Up: %1 at the bottom, %2 at the top.</source>
        <translation>Subida: %1 abajo, %2 arriba.</translation>
    </message>
    <message>
        <source>That side is %1 heavier: do not press, ride to the safeties.</source>
        <translation>Ese lado pesa %1 más: no empujes, baja hasta las barras de seguridad.</translation>
    </message>
    <message>
        <source>The near hand would hold %1, and the far hand would have to pull down.</source>
        <translation>La mano cercana sostendría %1, y la lejana tendría que tirar hacia abajo.</translation>
    </message>
    <message>
        <source>The near hand would hold %1, the far hand %2.</source>
        <translation>La mano cercana sostendría %1, la lejana %2.</translation>
    </message>
    <message>
        <source>Of her own depth, %1 come so deep that both hooks are free.</source>
        <translation>Con su profundidad, %1 bajan tanto que los dos ganchos quedan libres.</translation>
    </message>
    <message>
        <source>With one end 1° lower, %1; in the others one side stays on.</source>
        <translation>Con un extremo 1° más bajo, %1; en las demás un lado se queda puesto.</translation>
    </message>
    <message>
        <source>The margin is yours, %1.</source>
        <translation>El margen es tuyo, %1.</translation>
    </message>
    <message>
        <source>The margin is twice her own spread, %1.</source>
        <translation>El margen es el doble de su propia variación, %1.</translation>
    </message>
    <message>
        <source>So that the bar&apos;s centre rests from %1 to %2, tried with an empty bar.</source>
        <translation>De modo que el centro de la barra descanse de %1 a %2, probado con la barra vacía.</translation>
    </message>
    <message>
        <source>At the upper end %1 touch them.</source>
        <translation>En el extremo alto, %1 los tocan.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 % of the way up</source>
        <translation>%1 % de la subida</translation>
    </message>
    <message>
        <source>%1 % of the 1RM down</source>
        <translation>%1 % del 1RM al bajar</translation>
    </message>
    <message>
        <source>%1, %2 % up</source>
        <translation>%1, %2 % al subir</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>release hooks</source>
        <translation>ganchos de suelta</translation>
    </message>
    <message>
        <source>partner lifts plates off</source>
        <translation>el compañero quita discos</translation>
    </message>
    <message>
        <source>partner pushes</source>
        <translation>el compañero empuja</translation>
    </message>
    <message>
        <source>bands let go</source>
        <translation>bandas que se sueltan</translation>
    </message>
    <message>
        <source>dumbbells dropped</source>
        <translation>mancuernas que se sueltan</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 al bajar</translation>
    </message>
    <message>
        <source>%1: %2 % up, %3 % of that down</source>
        <translation>%1: %2 % al subir, %3 % de eso al bajar</translation>
    </message>
    <message>
        <source>%1: %2 % up, %3 % down</source>
        <translation>%1: %2 % al subir, %3 % al bajar</translation>
    </message>
    <message>
        <source>Her 1RM in this lift is not known: test it, or ask for loads.</source>
        <translation>No se sabe su 1RM en este ejercicio: pruébalo o pide cargas.</translation>
    </message>
    <message>
        <source>The load on the way up is none that can be hung: ask for another.</source>
        <translation>La carga de subida no se puede colgar: pide otra.</translation>
    </message>
    <message>
        <source>The way down has to be heavier than the way up: ask for more.</source>
        <translation>La bajada tiene que pesar más que la subida: pide más.</translation>
    </message>
    <message>
        <source>The percentages are none that can be asked for: ask for others.</source>
        <translation>Esos porcentajes no se pueden pedir: pide otros.</translation>
    </message>
    <message>
        <source>Weigh one hook: its frame is part of the load.</source>
        <translation>Pesa un gancho: su armazón es parte de la carga.</translation>
    </message>
    <message>
        <source>The empty hooks are more than they may carry: read the rating again.</source>
        <translation>Los ganchos vacíos superan lo que pueden llevar: lee otra vez el límite.</translation>
    </message>
    <message>
        <source>Not with these plates: a lighter bar leaves more for the hooks.</source>
        <translation>Con estos discos no: una barra más ligera deja más para los ganchos.</translation>
    </message>
    <message>
        <source>The sleeve does not hold all of it: ask for less, or use hooks.</source>
        <translation>No cabe todo en la manga: pide menos o usa ganchos.</translation>
    </message>
    <message>
        <source>Say what one dumbbell weighs.</source>
        <translation>Di cuánto pesa una mancuerna.</translation>
    </message>
    <message>
        <source>Her depth: watch three reps at least and read the lowest bar in each, or use a box.</source>
        <translation>Su profundidad: mira al menos tres repeticiones y lee la barra más baja en cada una, o usa un cajón.</translation>
    </message>
    <message>
        <source>Three reps at least: two say little of how they differ.</source>
        <translation>Tres repeticiones como mínimo: dos dicen poco de cuánto varían.</translation>
    </message>
    <message>
        <source>Measure from the bar&apos;s centre to the top of the sleeve.</source>
        <translation>Mide del centro de la barra a lo alto de la manga.</translation>
    </message>
    <message>
        <source>Try with an empty bar how far it goes on down until the lip is clear.</source>
        <translation>Prueba con la barra vacía cuánto sigue bajando hasta que el labio queda libre.</translation>
    </message>
    <message>
        <source>On a box she has no spread of her own: say how far above it the hooks should be free.</source>
        <translation>Sobre un cajón no hay variación propia: di a qué distancia por encima deben quedar libres los ganchos.</translation>
    </message>
    <message>
        <source>No setting of the hooks is long enough: shorter ones never let go.</source>
        <translation>Ningún ajuste de los ganchos es bastante largo: los más cortos nunca sueltan.</translation>
    </message>
    <message>
        <source>Measure from hook to hook: what one side would be heavier by stands on it.</source>
        <translation>Mide de gancho a gancho: de eso depende lo que haría un solo lado.</translation>
    </message>
    <message>
        <source>Measure from hand to hand again.</source>
        <translation>Mide otra vez de mano a mano.</translation>
    </message>
    <message>
        <source>The hooks&apos; feet have to stand between her top and her bottom: measure again.</source>
        <translation>Los pies de los ganchos tienen que apoyar entre su punto alto y su punto bajo: mide de nuevo.</translation>
    </message>
    <message>
        <source>Her bar marks come first.</source>
        <translation>Primero, sus marcas de barra.</translation>
    </message>
    <message>
        <source>Hang the bands that are to be let go, anchored below.</source>
        <translation>Cuelga las bandas que se van a soltar, ancladas abajo.</translation>
    </message>
    <message>
        <source>Measure her arched chest, lying as she will lie.</source>
        <translation>Mide su pecho arqueado, tumbada como va a estar.</translation>
    </message>
    <message>
        <source>Measure her throat, lying as she will lie: the bar has to rest above it and below the chest.</source>
        <translation>Mide su garganta, tumbada como va a estar: la barra tiene que descansar por encima y por debajo del pecho.</translation>
    </message>
    <message>
        <source>Something of it cannot be right: measure and enter it again.</source>
        <translation>Algo de esto no puede ser: mide y escríbelo de nuevo.</translation>
    </message>
    <message>
        <source>%1: %2 up, %3 down</source>
        <translation>%1: %2 al subir, %3 al bajar</translation>
    </message>
    <message>
        <source>%1 up · %2 down</source>
        <translation>%1 al subir · %2 al bajar</translation>
    </message>
    <message>
        <source>Bar: bare</source>
        <translation>Barra: vacía</translation>
    </message>
    <message>
        <source>Bar, each side: %1</source>
        <translation>Barra, cada lado: %1</translation>
    </message>
    <message>
        <source>Hook, seat to foot: set to %1 (%2 or longer)</source>
        <translation>Gancho, de asiento a pie: ponlo en %1 (%2 o más)</translation>
    </message>
    <message>
        <source>Hook, seat to foot: %1 or longer</source>
        <translation>Gancho, de asiento a pie: %1 o más</translation>
    </message>
    <message>
        <source>Foot stands at %1, free at %2</source>
        <translation>El pie apoya a %1, libre a %2</translation>
    </message>
    <message>
        <source>If one side stays on</source>
        <translation>Si un lado se queda puesto</translation>
    </message>
    <message>
        <source>Safeties</source>
        <translation>Barras de seguridad</translation>
    </message>
    <message>
        <source>Whether they let go</source>
        <translation>Si se sueltan</translation>
    </message>
    <message>
        <source>Overloaded</source>
        <translation>Con sobrecarga</translation>
    </message>
    <message>
        <source>The set cannot be done as it is put down: look at reps, clusters and who puts back.</source>
        <translation>La serie no se puede hacer así: mira repeticiones, grupos y quién vuelve a poner.</translation>
    </message>
    <message>
        <source>What she holds</source>
        <translation>Lo que sostiene</translation>
    </message>
    <message>
        <source>Published loads, as context and no advice</source>
        <translation>Cargas publicadas, como contexto y no como consejo</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>arriba %1</translation>
    </message>
    <message>
        <source>foot stands %1</source>
        <translation>pie apoyado %1</translation>
    </message>
    <message>
        <source>free %1</source>
        <translation>libre %1</translation>
    </message>
    <message>
        <source>Bar and hook from the side, to scale: at the top the hook hangs, at %1 its foot stands, at %2 the bar is free of it.</source>
        <translation>Barra y gancho de lado, a escala: arriba el gancho cuelga, a %1 apoya el pie, a %2 la barra queda libre.</translation>
    </message>
    <message>
        <source>If one side stays on, that side is %1 heavier: do not press, ride to the safeties.</source>
        <translation>Si un lado se queda puesto, ese lado pesa %1 más: no empujes, baja hasta las barras de seguridad.</translation>
    </message>
</context>
<context>
    <name>saidtexts</name>
    <message>
        <source>%1 at first; put right on %2</source>
        <translation>%1 al principio; corregido el %2</translation>
    </message>
    <message>
        <source>%1 on %2 at first; put right on %3</source>
        <translation>%1 el %2 al principio; corregido el %3</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>sin longitud</translation>
    </message>
    <message>
        <source>%1, by its links</source>
        <translation>%1, por sus eslabones</translation>
    </message>
    <message>
        <source>%1 and %2, weighed</source>
        <translation>%1 y %2, en báscula</translation>
    </message>
    <message numerus="yes">
        <source>%n hangings</source>
        <translation>
            <numerusform>%n colgada</numerusform>
            <numerusform>%n colgadas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation>%1, hasta %2</translation>
    </message>
    <message numerus="yes">
        <source>%n heights</source>
        <translation>
            <numerusform>%n altura</numerusform>
            <numerusform>%n alturas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places, by its pull</source>
        <translation>
            <numerusform>%n punto, por su tracción</numerusform>
            <numerusform>%n puntos, por su tracción</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n angles, by its radius</source>
        <translation>
            <numerusform>%n ángulo, por su radio</numerusform>
            <numerusform>%n ángulos, por su radio</numerusform>
        </translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>aún por llegar</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message numerus="yes">
        <source>%n days old</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weeks old</source>
        <translation>
            <numerusform>hace %n semana</numerusform>
            <numerusform>hace %n semanas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n months old</source>
        <translation>
            <numerusform>hace %n mes</numerusform>
            <numerusform>hace %n meses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n years old</source>
        <translation>
            <numerusform>hace %n año</numerusform>
            <numerusform>hace %n años</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMM yyyy, hh:mm</source>
        <translation>d MMM yyyy, hh:mm</translation>
    </message>
    <message>
        <source>%1, on this device</source>
        <translation>%1, en este dispositivo</translation>
    </message>
    <message>
        <source>%1, on device %2</source>
        <translation>%1, en el dispositivo %2</translation>
    </message>
</context>
<context>
    <name>say</name>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 a foot</source>
        <translation>%1 por pie</translation>
    </message>
    <message>
        <source>%1 a metre</source>
        <translation>%1 por metro</translation>
    </message>
    <message>
        <source>entered as %1 %2</source>
        <translation>anotado como %1 %2</translation>
    </message>
    <message>
        <source>about %1 ± %2</source>
        <translation>cerca de %1 ± %2</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source>Left band slack above %1</source>
        <translation>Banda izquierda floja por encima de %1</translation>
    </message>
    <message>
        <source>Right band slack above %1</source>
        <translation>Banda derecha floja por encima de %1</translation>
    </message>
    <message>
        <source>Bands slack above %1</source>
        <translation>Bandas flojas por encima de %1</translation>
    </message>
    <message>
        <source>Left band slack up to %1</source>
        <translation>Banda izquierda floja hasta %1</translation>
    </message>
    <message>
        <source>Right band slack up to %1</source>
        <translation>Banda derecha floja hasta %1</translation>
    </message>
    <message>
        <source>Bands slack up to %1</source>
        <translation>Bandas flojas hasta %1</translation>
    </message>
    <message>
        <source>Left chain: first link up at %1</source>
        <translation>Cadena izquierda: despega el primer eslabón a %1</translation>
    </message>
    <message>
        <source>Right chain: first link up at %1</source>
        <translation>Cadena derecha: despega el primer eslabón a %1</translation>
    </message>
    <message>
        <source>Chains: first link up at %1</source>
        <translation>Cadenas: despega el primer eslabón a %1</translation>
    </message>
    <message>
        <source>Left chain: last link off at %1</source>
        <translation>Cadena izquierda: despega el último eslabón a %1</translation>
    </message>
    <message>
        <source>Right chain: last link off at %1</source>
        <translation>Cadena derecha: despega el último eslabón a %1</translation>
    </message>
    <message>
        <source>Chains: last link off at %1</source>
        <translation>Cadenas: despega el último eslabón a %1</translation>
    </message>
    <message>
        <source>Left side: not measured past %1</source>
        <translation>Lado izquierdo: sin medir más allá de %1</translation>
    </message>
    <message>
        <source>Right side: not measured past %1</source>
        <translation>Lado derecho: sin medir más allá de %1</translation>
    </message>
    <message>
        <source>Not measured past %1</source>
        <translation>Sin medir más allá de %1</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>sticking zone</source>
        <translation>zona de estancamiento</translation>
    </message>
    <message>
        <source>rack mark</source>
        <translation>altura de apoyo</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>collars</source>
        <translation>cierres</translation>
    </message>
    <message>
        <source>plates</source>
        <translation>discos</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>disco</translation>
    </message>
    <message>
        <source>number of plates</source>
        <translation>número de discos</translation>
    </message>
    <message>
        <source>room on the sleeve</source>
        <translation>espacio en la manga</translation>
    </message>
    <message>
        <source>hangings</source>
        <translation>colgadas</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>step of the scale</source>
        <translation>escalón de la báscula</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>alambre</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>inner width</source>
        <translation>ancho interior</translation>
    </message>
    <message>
        <source>length at rest</source>
        <translation>longitud en reposo</translation>
    </message>
    <message>
        <source>height of the anchor</source>
        <translation>altura del anclaje</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>correa</translation>
    </message>
    <message>
        <source>mass of the lead</source>
        <translation>masa de la correa</translation>
    </message>
    <message>
        <source>height of the bunch</source>
        <translation>altura del manojo</translation>
    </message>
    <message>
        <source>mass per metre</source>
        <translation>masa por metro</translation>
    </message>
    <message>
        <source>what it shows empty</source>
        <translation>lo que muestra vacía</translation>
    </message>
    <message>
        <source>what is marked on it</source>
        <translation>lo que lleva marcado</translation>
    </message>
    <message>
        <source>how many at once</source>
        <translation>cantidad a la vez</translation>
    </message>
    <message>
        <source>accuracy of the scale</source>
        <translation>exactitud de la báscula</translation>
    </message>
    <message>
        <source>height of the lowest hole</source>
        <translation>altura del agujero más bajo</translation>
    </message>
    <message>
        <source>from hole to hole</source>
        <translation>de agujero a agujero</translation>
    </message>
    <message>
        <source>number of holes</source>
        <translation>número de agujeros</translation>
    </message>
    <message>
        <source>distance of the anchor</source>
        <translation>distancia del anclaje</translation>
    </message>
    <message>
        <source>what is pinned on the stack</source>
        <translation>lo puesto con el pasador en la pila de pesas</translation>
    </message>
    <message>
        <source>thickness of the handle</source>
        <translation>grosor de la empuñadura</translation>
    </message>
    <message>
        <source>Up there they help no more. Anchor them higher to help longer.</source>
        <translation>Ahí arriba ya no ayudan. Ánclalas más alto para que ayuden más tiempo.</translation>
    </message>
    <message>
        <source>Below that they add nothing and may slip off. Anchor them lower, or double them.</source>
        <translation>Por debajo no añaden nada y pueden soltarse. Ánclalas más bajo o ponlas dobles.</translation>
    </message>
    <message>
        <source>Below that the chain adds nothing. A shorter lead starts it sooner.</source>
        <translation>Por debajo la cadena no añade nada. Con una correa más corta empieza antes.</translation>
    </message>
    <message>
        <source>Above that it swings and adds no more. A longer lead keeps a link down.</source>
        <translation>Por encima la cadena se balancea y no añade más. Una correa más larga deja un eslabón en el suelo.</translation>
    </message>
    <message>
        <source>Bench aid not measured past %1</source>
        <translation>Ayuda de banca sin medir más allá de %1</translation>
    </message>
    <message>
        <source>Its help beyond is unknown. Read it there too, or say where the chest is.</source>
        <translation>Más allá no se sabe cuánto ayuda. Léela también ahí, o di dónde está el pecho.</translation>
    </message>
    <message>
        <source>The pull beyond is unknown. Hang more on the band and read its length, or hang it slacker.</source>
        <translation>Más allá no se sabe la tracción. Cuelga más de la banda y lee su longitud, o cuélgala más floja.</translation>
    </message>
    <message>
        <source>Left pulls more, from %1 up</source>
        <translation>La izquierda tira más, desde %1</translation>
    </message>
    <message>
        <source>Right pulls more, from %1 up</source>
        <translation>La derecha tira más, desde %1</translation>
    </message>
    <message>
        <source>By over 2 % of the whole. Hang both sides alike.</source>
        <translation>Más de un 2 % del total. Cuelga igual en ambos lados.</translation>
    </message>
    <message>
        <source>It gets lighter from %1 up</source>
        <translation>Se aligera desde %1</translation>
    </message>
    <message>
        <source>Look whether it hangs as you meant.</source>
        <translation>Mira si cuelga como querías.</translation>
    </message>
    <message>
        <source>Bands pull the bar forward, from %1 up</source>
        <translation>Las bandas tiran de la barra hacia delante, desde %1</translation>
    </message>
    <message>
        <source>By over 3 % of the whole. Anchor them under the bar.</source>
        <translation>Más de un 3 % del total. Ánclalas debajo de la barra.</translation>
    </message>
    <message>
        <source>Bands pull the bar back, from %1 up</source>
        <translation>Las bandas tiran de la barra hacia atrás, desde %1</translation>
    </message>
    <message>
        <source>Over the cap from %1 up</source>
        <translation>Por encima del tope desde %1</translation>
    </message>
    <message>
        <source>Do not lift this. Take plates off.</source>
        <translation>No lo levantes. Quita discos.</translation>
    </message>
    <message>
        <source>More than the rack may carry</source>
        <translation>Más de lo que aguanta el rack</translation>
    </message>
    <message>
        <source>More than the safeties may carry, from %1 up</source>
        <translation>Más de lo que aguantan las barras de seguridad, desde %1</translation>
    </message>
    <message>
        <source>More plates than the sleeve holds</source>
        <translation>Más discos de los que caben en la manga</translation>
    </message>
    <message>
        <source>Do not lift this. Use fewer, heavier plates.</source>
        <translation>No lo levantes. Usa menos discos, más pesados.</translation>
    </message>
    <message>
        <source>The anchor of %1 may lift</source>
        <translation>El anclaje de %1 puede levantarse</translation>
    </message>
    <message>
        <source>Do not lift this. Up to %1 pull it up, %2 hold it: it takes %3 times the pull. Hold it down with more.</source>
        <translation>No lo levantes. Hasta %1 tiran de él, %2 lo sujetan: hace falta %3 veces la tracción. Lástralo más.</translation>
    </message>
    <message>
        <source>hanging %1</source>
        <translation>colgada %1</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>lectura %1</translation>
    </message>
    <message>
        <source>something that is not in the kit</source>
        <translation>algo que no está en el material</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Still to enter: %1.</source>
        <translation>Falta anotar: %1.</translation>
    </message>
    <message>
        <source>Read it at least at two heights, with another mass on it each time.</source>
        <translation>Léela al menos a dos alturas, cada vez con otra masa encima.</translation>
    </message>
    <message>
        <source>Read it at least at two places along its way.</source>
        <translation>Léela al menos en dos puntos de su recorrido.</translation>
    </message>
    <message>
        <source>One try tells nothing of its own scatter. Take at least two tries in each condition.</source>
        <translation>Un intento no dice nada de su propia dispersión. Haz al menos dos en cada condición.</translation>
    </message>
    <message>
        <source>Too short a stand to weigh her on. Record again, with a second of standing still first, or allow a short weighing.</source>
        <translation>Estuvo quieta muy poco para pesarla. Registra otra vez, con un segundo de quietud antes, o admite una pesada corta.</translation>
    </message>
    <message>
        <source>The record is too short. Record again, from standing still to after the try.</source>
        <translation>El registro es demasiado corto. Registra otra vez, desde la quietud hasta después del intento.</translation>
    </message>
    <message>
        <source>There are no numbers in this file. Choose a text file with the force in a column.</source>
        <translation>En este archivo no hay números. Elige un archivo de texto con la fuerza en una columna.</translation>
    </message>
    <message>
        <source>Hang at least two different masses and read the length of each.</source>
        <translation>Cuelga al menos dos masas distintas y lee la longitud con cada una.</translation>
    </message>
    <message>
        <source>Read at the same place as another: %1. Read one of them again.</source>
        <translation>Leída en el mismo punto que otra: %1. Vuelve a leer una de las dos.</translation>
    </message>
    <message>
        <source>The readings are too alike. Hang a different mass.</source>
        <translation>Las lecturas son demasiado parecidas. Cuelga otra masa.</translation>
    </message>
    <message>
        <source>Not longer than at rest: %1. Read it again, or the length at rest.</source>
        <translation>No más larga que en reposo: %1. Vuelve a leerla, o la longitud en reposo.</translation>
    </message>
    <message>
        <source>More mass, yet no longer: read the lengths again.</source>
        <translation>Más masa y no más larga: vuelve a leer las longitudes.</translation>
    </message>
    <message>
        <source>Out of order: %1. Bottom, sticking zone and top go up.</source>
        <translation>Fuera de orden: %1. Abajo, zona de estancamiento y arriba van subiendo.</translation>
    </message>
    <message>
        <source>Anchored above means over her top mark, below means under her bottom mark: %1. Enter it again, or turn it round.</source>
        <translation>Anclada arriba es por encima de su marca de arriba; abajo, por debajo de su marca de abajo: %1. Anótalo de nuevo, o dale la vuelta.</translation>
    </message>
    <message>
        <source>More hangs than is here: %1. Measure another, or hang it on one side.</source>
        <translation>Cuelga más de lo que hay: %1. Mide otra, o cuélgala en un solo lado.</translation>
    </message>
    <message>
        <source>Higher up an aid helps less, and here it would help more: %1. Read it again, or leave it out.</source>
        <translation>Más arriba una ayuda ayuda menos, y aquí ayudaría más: %1. Vuelve a leerla u omítela.</translation>
    </message>
    <message>
        <source>She did not stay still while she was weighed. Take the try again, with a second of stillness first.</source>
        <translation>No se quedó quieta mientras se pesaba. Repite el intento, con un segundo de quietud antes.</translation>
    </message>
    <message>
        <source>There is no flight in this record. Record it again, from standing still to landing.</source>
        <translation>En este registro no hay vuelo. Registra otra vez, desde la quietud hasta la caída.</translation>
    </message>
    <message>
        <source>There is no pull in this record. Record it again, with a second of stillness before the pull.</source>
        <translation>En este registro no hay tirón. Registra otra vez, con un segundo de quietud antes del tirón.</translation>
    </message>
    <message>
        <source>The force fell before it rose, so the try does not count. Pull again, without dropping first.</source>
        <translation>La fuerza bajó antes de subir, así que el intento no cuenta. Tira otra vez, sin ceder antes.</translation>
    </message>
    <message>
        <source>With the rear foot supported nobody knows what each leg lifts. Compare tests with the foot free.</source>
        <translation>Con el pie trasero apoyado nadie sabe qué levanta cada pierna. Compara pruebas con el pie libre.</translation>
    </message>
    <message>
        <source>Measured in different ways, so it cannot be compared: %1. Take all three in one way.</source>
        <translation>Medido de maneras distintas, no se puede comparar: %1. Mide las tres de una sola manera.</translation>
    </message>
    <message>
        <source>The unit is not said: %1. Say it in the head of the file, N or kN.</source>
        <translation>Falta la unidad: %1. Indícala en la cabecera del archivo, N o kN.</translation>
    </message>
    <message>
        <source>Not a number: %1. Enter it again.</source>
        <translation>No es un número: %1. Anótalo de nuevo.</translation>
    </message>
    <message>
        <source>This cannot be right: %1. Enter it again.</source>
        <translation>Esto no puede ser: %1. Anótalo de nuevo.</translation>
    </message>
    <message>
        <source>There is a point already.</source>
        <translation>Ya hay un separador decimal.</translation>
    </message>
    <message>
        <source>Whole numbers only.</source>
        <translation>Solo números enteros.</translation>
    </message>
    <message>
        <source>Not part of a number.</source>
        <translation>No forma parte de un número.</translation>
    </message>
    <message>
        <source>Key a number first.</source>
        <translation>Primero teclea un número.</translation>
    </message>
    <message>
        <source>Less than %1 %2: read it again.</source>
        <translation>Menos de %1 %2: vuelve a leerlo.</translation>
    </message>
    <message>
        <source>More than %1 %2: read it again.</source>
        <translation>Más de %1 %2: vuelve a leerlo.</translation>
    </message>
    <message>
        <source>Chains: before it is ready</source>
        <translation>Cadenas: antes de estar listo</translation>
    </message>
    <message>
        <source>The plain lift is stable.</source>
        <translation>El levantamiento sin cadenas es estable.</translation>
    </message>
    <message>
        <source>Last link still down at the top.</source>
        <translation>Arriba, el último eslabón sigue en el suelo.</translation>
    </message>
    <message>
        <source>Feet clear of chain on the walk-out.</source>
        <translation>Pies lejos de la cadena al retroceder.</translation>
    </message>
    <message>
        <source>Even on both sides, collars on.</source>
        <translation>Igual en ambos lados, cierres puestos.</translation>
    </message>
    <message>
        <source>Each pulls up to %1 up on its anchor: it must hold well over that.</source>
        <translation>Cada una tira hasta %1 de su anclaje: debe aguantar bastante más.</translation>
    </message>
    <message>
        <source>How hard each pulls up on its anchor is not known: measure it further.</source>
        <translation>No se sabe cuánto tira cada una de su anclaje: mide más allá.</translation>
    </message>
    <message>
        <source>Bands from below: before it is ready</source>
        <translation>Bandas desde abajo: antes de estar listo</translation>
    </message>
    <message>
        <source>No cuts or thin places. Faces out of the band&apos;s line.</source>
        <translation>Sin cortes ni zonas finas. Caras fuera de la línea de la banda.</translation>
    </message>
    <message>
        <source>Release the bands before changing plates.</source>
        <translation>Suelta las bandas antes de cambiar discos.</translation>
    </message>
    <message>
        <source>If it slips or tears she holds %1 at the bottom: safeties in, spotters ready for all of it.</source>
        <translation>Si se suelta o se rompe, abajo quedan %1 en sus manos: barras de seguridad puestas, ayudantes preparados para todo.</translation>
    </message>
    <message>
        <source>What she holds at the bottom if it slips or tears is not known: safeties in, spotters ready for all of it.</source>
        <translation>No se sabe cuánto queda abajo en sus manos si se suelta o se rompe: barras de seguridad puestas, ayudantes preparados para todo.</translation>
    </message>
    <message>
        <source>Bench aid: before it is ready</source>
        <translation>Ayuda de banca: antes de estar listo</translation>
    </message>
    <message>
        <source>No cuts, thin places or loose seams; it sits even on both arms.</source>
        <translation>Sin cortes, zonas finas ni costuras sueltas; asienta igual en ambos brazos.</translation>
    </message>
    <message>
        <source>Measured as she wears it: on another body it helps otherwise.</source>
        <translation>Medida tal como se lleva puesta: en otro cuerpo ayuda de otro modo.</translation>
    </message>
    <message>
        <source>If a band slips she holds %1 at the bottom: safeties in.</source>
        <translation>Si se suelta una banda, abajo quedan %1 en sus manos: barras de seguridad puestas.</translation>
    </message>
    <message>
        <source>What she holds at the bottom if a band slips is not known: safeties in.</source>
        <translation>No se sabe cuánto queda abajo en sus manos si se suelta una banda: barras de seguridad puestas.</translation>
    </message>
    <message>
        <source>Bands from above: before it is ready</source>
        <translation>Bandas desde arriba: antes de estar listo</translation>
    </message>
    <message>
        <source>Never strip plates with the bands on.</source>
        <translation>Nunca quites discos con las bandas puestas.</translation>
    </message>
    <message numerus="yes">
        <source>No more than %Ln figures before the point.</source>
        <translation>
            <numerusform>Una cifra entera, no más.</numerusform>
            <numerusform>No más de %Ln cifras enteras.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No more than %Ln figures after the point.</source>
        <translation>
            <numerusform>Un decimal, no más.</numerusform>
            <numerusform>No más de %Ln decimales.</numerusform>
        </translation>
    </message>
    <message>
        <source>If one side stays on: do not press, ride to the safeties.</source>
        <translation>Si un lado no se suelta: no empujar, bajar a las barras de seguridad.</translation>
    </message>
    <message>
        <source>Heavier on the way down: before it is ready</source>
        <translation>Más carga al bajar: antes de estar listo</translation>
    </message>
    <message>
        <source>Rehearsed with empty hooks, or with what is let go left off, until both sides let go together each time.</source>
        <translation>Ensayado con ganchos vacíos, o sin lo que se suelta, hasta que los dos lados suelten siempre a la vez.</translation>
    </message>
    <message>
        <source>A spotter at each end. Safeties in, tried with an empty bar.</source>
        <translation>Un ayudante en cada extremo. Barras de seguridad puestas, probadas con la barra vacía.</translation>
    </message>
    <message>
        <source>The plain lift is stable, and somebody qualified has cleared her by name. Your local rules come first.</source>
        <translation>El ejercicio solo con hierro es estable, y alguien cualificado la ha autorizado por su nombre. Las normas locales van primero.</translation>
    </message>
</context>
<context>
    <name>setuptexts</name>
    <message>
        <source>Not known: measure further</source>
        <translation>No se sabe: mide más allá</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 at the bottom, %2 in the sticking zone, %3 at the top</source>
        <translation>%1 abajo, %2 en la zona de estancamiento, %3 arriba</translation>
    </message>
    <message>
        <source>%1 at the bottom, %2 at the top</source>
        <translation>%1 abajo, %2 arriba</translation>
    </message>
    <message>
        <source>%1 J</source>
        <translation>%1 J</translation>
    </message>
    <message>
        <source>%1 ± %2 J</source>
        <translation>%1 ± %2 J</translation>
    </message>
    <message>
        <source>sticking zone %1 to %2</source>
        <translation>zona de estancamiento de %1 a %2</translation>
    </message>
    <message>
        <source>off the rack %1</source>
        <translation>al sacar del rack %1</translation>
    </message>
    <message>
        <source>work %1 a rep</source>
        <translation>trabajo %1 por repetición</translation>
    </message>
    <message>
        <source>band</source>
        <translation>banda</translation>
    </message>
    <message>
        <source>band and aid</source>
        <translation>banda y ayuda</translation>
    </message>
    <message>
        <source>aid</source>
        <translation>ayuda</translation>
    </message>
    <message>
        <source>See what forbids it.</source>
        <translation>Mira qué lo prohíbe.</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>LISTO</translation>
    </message>
    <message>
        <source>Nothing hangs but iron.</source>
        <translation>Solo cuelga hierro.</translation>
    </message>
    <message>
        <source>Looked over as it hangs.</source>
        <translation>Revisado tal como cuelga.</translation>
    </message>
    <message>
        <source>DO NOT LIFT</source>
        <translation>NO LEVANTAR</translation>
    </message>
    <message>
        <source>Look it over first.</source>
        <translation>Revísalo primero.</translation>
    </message>
    <message>
        <source>Past what was measured.</source>
        <translation>Más allá de lo medido.</translation>
    </message>
    <message>
        <source>NOT READY</source>
        <translation>NO LISTO</translation>
    </message>
    <message>
        <source>Her bar marks come first</source>
        <translation>Primero, sus marcas de la barra</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Aún no se sabe</translation>
    </message>
    <message>
        <source>mean of the path %1, mean of the ends %2</source>
        <translation>media de la trayectoria %1, media de los extremos %2</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>sticking</source>
        <translation>estancamiento</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>Out of use: %1</source>
        <translation>Fuera de uso: %1</translation>
    </message>
    <message>
        <source>Take another, or look it over and say that it is fit.</source>
        <translation>Toma otra, o revísala y di que es apta.</translation>
    </message>
    <message>
        <source>Lent: %1</source>
        <translation>Prestado: %1</translation>
    </message>
    <message>
        <source>Take another, or say in Kit that it is back.</source>
        <translation>Toma otra, o di en Material que se ha devuelto.</translation>
    </message>
    <message>
        <source>%1: not known</source>
        <translation>%1: no se sabe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>recta</translation>
    </message>
    <message>
        <source>doubled</source>
        <translation>doblada</translation>
    </message>
    <message>
        <source>bunched</source>
        <translation>en manojo</translation>
    </message>
    <message>
        <source>%1, on a lead of %2</source>
        <translation>%1, con correa de %2</translation>
    </message>
    <message>
        <source>%1, no lead</source>
        <translation>%1, sin correa</translation>
    </message>
    <message>
        <source>one loop</source>
        <translation>un solo lazo</translation>
    </message>
    <message>
        <source>from above, %1</source>
        <translation>desde arriba, %1</translation>
    </message>
    <message>
        <source>anchored at %1</source>
        <translation>anclada a %1</translation>
    </message>
    <message>
        <source>anchored on the floor</source>
        <translation>anclada en el suelo</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3 in front</source>
        <translation>%1, %2, %3 por delante</translation>
    </message>
    <message>
        <source>%1, %2, %3 behind</source>
        <translation>%1, %2, %3 por detrás</translation>
    </message>
    <message>
        <source>worn, the chest at %1</source>
        <translation>puesta, el pecho a %1</translation>
    </message>
    <message>
        <source>worn, the chest at her bottom mark</source>
        <translation>puesta, el pecho en su marca de abajo</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>its twin</source>
        <translation>su gemela</translation>
    </message>
    <message>
        <source>bare bar</source>
        <translation>barra sola</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>cadena</translation>
    </message>
    <message>
        <source>it hangs already</source>
        <translation>ya está puesto</translation>
    </message>
    <message>
        <source>put on %1, each side</source>
        <translation>pon %1, cada lado</translation>
    </message>
    <message>
        <source>take off %1, each side</source>
        <translation>quita %1, cada lado</translation>
    </message>
    <message>
        <source>take off %1, put on %2, each side</source>
        <translation>quita %1, pon %2, cada lado</translation>
    </message>
    <message>
        <source>Measured long ago: %1</source>
        <translation>Medido hace mucho: %1</translation>
    </message>
    <message>
        <source>On %1, longer ago than your limit: what is uncertain of its pull counts half as much again. Measure it anew.</source>
        <translation>El %1, más atrás que tu límite: lo incierto de su tracción cuenta la mitad más. Mídelo de nuevo.</translation>
    </message>
    <message>
        <source>Heavier on the way down: its bar is another.</source>
        <translation>Más carga al bajar: le corresponde otra barra.</translation>
    </message>
    <message>
        <source>Heavier on the way down: for nobody yet.</source>
        <translation>Más carga al bajar: aún para nadie.</translation>
    </message>
    <message>
        <source>Heavier on the way down: not all is known.</source>
        <translation>Más carga al bajar: aún no se sabe todo.</translation>
    </message>
</context>
<context>
    <name>sledtexts</name>
    <message>
        <source>Friction %1, found with %2 to %3 in all</source>
        <translation>Rozamiento %1, hallado con %2 a %3 en total</translation>
    </message>
    <message>
        <source>%1 N, as much as %2 weigh</source>
        <translation>%1 N, lo que pesan %2</translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation>%1 m/s</translation>
    </message>
    <message>
        <source>How fast: not known yet</source>
        <translation>Velocidad: aún no se sabe</translation>
    </message>
    <message>
        <source>Pushed like this it locks: the push presses it down as hard as it moves it. Push lower, or with less on it.</source>
        <translation>Empujado así se clava: el empuje lo aprieta contra el suelo tanto como lo mueve. Empuja más abajo o con menos encima.</translation>
    </message>
    <message>
        <source>Nobody knows what the sled weighs: measure it in Kit.</source>
        <translation>Nadie sabe cuánto pesa el trineo: mídelo en Material.</translation>
    </message>
    <message>
        <source>Measure its strap and the height of its hook in Kit, then it is known how steep it pulls.</source>
        <translation>Mide en Material su correa y la altura de su gancho, y se sabrá con qué inclinación tira.</translation>
    </message>
    <message>
        <source>Three timed runs with different loads make a line; two do not say how sure it is.</source>
        <translation>Tres carreras cronometradas con cargas distintas dan una recta; dos no dicen cómo de segura es.</translation>
    </message>
</context>
<context>
    <name>standingtexts</name>
    <message>
        <source>somebody</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>from %1 until %2</source>
        <translation>desde el %1 hasta el %2</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>not: %1</source>
        <translation>no: %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>not known: a newer app set it</source>
        <translation>desconocido: lo puso una aplicación más nueva</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>set by a newer app</source>
        <translation>puesto por una aplicación más nueva</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; lifted: %2</source>
        <translation>%1; levantado: %2</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>vale</translation>
    </message>
    <message>
        <source>lifted</source>
        <translation>levantado</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>over</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; knowing that she may be under age</source>
        <translation>%1; sabiendo que puede ser menor de edad</translation>
    </message>
    <message>
        <source>%1; taken back: %2</source>
        <translation>%1; retirada: %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>The birth year comes first: without it nobody knows whether a guardian has to agree.</source>
        <translation>Primero, el año de nacimiento: sin él nadie sabe si tiene que consentir un tutor.</translation>
    </message>
    <message>
        <source>A parent or guardian has to agree first: until then only name, squad and loads are kept.</source>
        <translation>Primero tiene que consentir un padre, una madre o un tutor: hasta entonces solo se guardan nombre, grupo y cargas.</translation>
    </message>
</context>
<context>
    <name>strengthtexts</name>
    <message>
        <source>her %1 alone</source>
        <translation>solo sus %1</translation>
    </message>
    <message>
        <source>her %1, %2 of it taken off</source>
        <translation>sus %1, con %2 de ayuda</translation>
    </message>
    <message>
        <source>her %1 and %2</source>
        <translation>sus %1 y %2</translation>
    </message>
    <message>
        <source>%1 at the bottom</source>
        <translation>%1 abajo</translation>
    </message>
    <message>
        <source>%1 in the sticking zone</source>
        <translation>%1 en la zona de estancamiento</translation>
    </message>
    <message>
        <source>%1 at the top</source>
        <translation>%1 arriba</translation>
    </message>
    <message>
        <source>%1 on the mean</source>
        <translation>%1 de media</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>probado el %1</translation>
    </message>
    <message>
        <source>estimated %1</source>
        <translation>estimado el %1</translation>
    </message>
    <message>
        <source>tried out: %1, the next jump of %2 was too much</source>
        <translation>probado: %1; el siguiente salto, de %2, fue demasiado</translation>
    </message>
    <message>
        <source>tried out: %1, the next jump was too much</source>
        <translation>probado: %1; el siguiente salto fue demasiado</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, then one missed</source>
        <translation>%1, luego una fallada</translation>
    </message>
    <message>
        <source>%1, reserve not said</source>
        <translation>%1, reserva sin decir</translation>
    </message>
    <message>
        <source>%1, none in reserve</source>
        <translation>%1, ninguna en reserva</translation>
    </message>
    <message>
        <source>%1, %2 in reserve</source>
        <translation>%1, %2 en reserva</translation>
    </message>
    <message>
        <source>chains</source>
        <translation>cadenas</translation>
    </message>
    <message>
        <source>bands from below</source>
        <translation>bandas desde abajo</translation>
    </message>
    <message>
        <source>bands from above</source>
        <translation>bandas desde arriba</translation>
    </message>
    <message>
        <source>a bench aid</source>
        <translation>una ayuda de banca</translation>
    </message>
    <message>
        <source>a machine</source>
        <translation>una máquina</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>plain iron</source>
        <translation>solo hierro</translation>
    </message>
    <message>
        <source>as kept on %1: %2</source>
        <translation>como se guardó el %1: %2</translation>
    </message>
    <message>
        <source>a set-up that was taken out</source>
        <translation>un montaje que se quitó</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>from %1: a maximum tried out goes before any set</source>
        <translation>de %1: un máximo probado va antes que cualquier serie</translation>
    </message>
    <message>
        <source>from %1: the heaviest that was tried out</source>
        <translation>de %1: lo más pesado que se probó</translation>
    </message>
    <message>
        <source>from %1: of the day&apos;s sets it shows most even at its lowest</source>
        <translation>de %1: de las series del día es la que más muestra incluso en su extremo bajo</translation>
    </message>
    <message>
        <source>%1. A set of the day shows more than the test: what was tried out was no maximum.</source>
        <translation>%1. Una serie del día muestra más que la prueba: lo probado no era un máximo.</translation>
    </message>
    <message>
        <source>F/M %1</source>
        <translation>F/M %1</translation>
    </message>
    <message>
        <source>F/M^0.67 %1</source>
        <translation>F/M^0.67 %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>sin probar</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>Nothing has tested it yet. A set of up to 10 reps gives a range; a maximum tried out a narrower one.</source>
        <translation>Aún no se ha probado. Una serie de hasta 10 repeticiones da un intervalo; un máximo probado, uno más estrecho.</translation>
    </message>
    <message>
        <source>It was tested only with something hung: percent needs a test with plain iron.</source>
        <translation>Solo se probó con algo colgado: el porcentaje necesita una prueba solo con hierro.</translation>
    </message>
    <message>
        <source>Her maximum has her body in it, and this load has not.</source>
        <translation>Su máximo incluye su cuerpo, y esta carga no.</translation>
    </message>
    <message>
        <source>Known once the pull is.</source>
        <translation>Se sabrá cuando se conozca la tracción.</translation>
    </message>
    <message>
        <source>%1 of %2 (%3), %4</source>
        <translation>%1 de %2 (%3), %4</translation>
    </message>
    <message>
        <source>A rep was missed</source>
        <translation>Se falló una repetición</translation>
    </message>
    <message>
        <source>The formulas are made for sets that ended before it: a set with all reps done, or a maximum tried out, would settle it.</source>
        <translation>Las fórmulas son para series que acaban antes: una serie completa o un máximo probado lo aclararía.</translation>
    </message>
    <message>
        <source>More than 5 in reserve</source>
        <translation>Más de 5 en reserva</translation>
    </message>
    <message>
        <source>So far from failure nobody can say how many more would go: a harder set would settle it.</source>
        <translation>Tan lejos del fallo nadie puede decir cuántas más saldrían: una serie más dura lo aclararía.</translation>
    </message>
    <message>
        <source>No rep was done</source>
        <translation>No se hizo ninguna repetición</translation>
    </message>
    <message>
        <source>A lighter load, lifted at least once, would settle it.</source>
        <translation>Una carga más ligera, levantada al menos una vez, lo aclararía.</translation>
    </message>
    <message>
        <source>More than 10 reps with those in reserve</source>
        <translation>Más de 10 repeticiones con las de reserva</translation>
    </message>
    <message>
        <source>Past 10 the formulas part company: a heavier set would settle it.</source>
        <translation>Por encima de 10 las fórmulas se separan: una serie más pesada lo aclararía.</translation>
    </message>
    <message>
        <source>The jump is not smaller than the load</source>
        <translation>El salto no es menor que la carga</translation>
    </message>
    <message>
        <source>Say the smallest step between two loads that were tried.</source>
        <translation>Indica el paso más pequeño entre dos cargas intentadas.</translation>
    </message>
    <message>
        <source>That load is none</source>
        <translation>Eso no es una carga</translation>
    </message>
    <message>
        <source>What is lifted, the body among it, has to be above nothing.</source>
        <translation>Lo que se levanta, con el cuerpo incluido, tiene que ser más que cero.</translation>
    </message>
</context>
<context>
    <name>tooltexts</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message numerus="yes">
        <source>%n known masses, to %1</source>
        <translation>
            <numerusform>%n masa conocida, hasta %1</numerusform>
            <numerusform>%n masas conocidas, hasta %1</numerusform>
        </translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>sin pesar</translation>
    </message>
    <message>
        <source>%1, marked %2</source>
        <translation>%1, marca %2</translation>
    </message>
    <message>
        <source>%1 for %2 marked %3</source>
        <translation>%1 para %2, marca %3</translation>
    </message>
    <message>
        <source>Good: within %1 up to %2</source>
        <translation>Bien: dentro de %1 hasta %2</translation>
    </message>
    <message>
        <source>Not good: %1 too much at %2</source>
        <translation>Mal: %1 de más con %2</translation>
    </message>
    <message>
        <source>Not good: %1 too little at %2</source>
        <translation>Mal: %1 de menos con %2</translation>
    </message>
    <message>
        <source>It shows %1 with nothing on it: set it to zero, or take that off what it reads.</source>
        <translation>Muestra %1 sin nada encima: ponla a cero, o resta eso de lo que indique.</translation>
    </message>
    <message>
        <source>It shows %1 under nothing with nothing on it: set it to zero, or add that to what it reads.</source>
        <translation>Muestra %1 por debajo de cero sin nada encima: ponla a cero, o suma eso a lo que indique.</translation>
    </message>
    <message>
        <source>What is weighed on it counts as up to %1 out.</source>
        <translation>Lo que se pese en ella cuenta con hasta %1 de error.</translation>
    </message>
    <message>
        <source>That is more than the scale was checked with: it is known up to %1.</source>
        <translation>Eso es más que la masa con que se comprobó la báscula: se conoce hasta %1.</translation>
    </message>
    <message>
        <source>Each weighs %1</source>
        <translation>Cada pieza pesa %1</translation>
    </message>
    <message>
        <source>It weighs %1</source>
        <translation>Pesa %1</translation>
    </message>
    <message>
        <source>Just what is marked on it.</source>
        <translation>Justo lo que lleva marcado.</translation>
    </message>
    <message>
        <source>Too close to call: %1 off the mark is within what the scale can be wrong.</source>
        <translation>Demasiado justo: %1 de diferencia con la marca cabe en lo que puede errar la báscula.</translation>
    </message>
    <message>
        <source>Too close to call: %1 off the mark is within the scale&apos;s step; the scale itself is not checked.</source>
        <translation>Demasiado justo: %1 de diferencia con la marca cabe en el escalón de la báscula; la báscula en sí no está comprobada.</translation>
    </message>
    <message>
        <source>%1 more than its mark, by %2</source>
        <translation>%1 más que su marca (%2)</translation>
    </message>
    <message>
        <source>%1 less than its mark, by %2</source>
        <translation>%1 menos que su marca (%2)</translation>
    </message>
    <message>
        <source>%1: more than the scale can be wrong.</source>
        <translation>%1: más de lo que puede errar la báscula.</translation>
    </message>
    <message>
        <source>%1: more than the scale&apos;s step explains; the scale itself is not checked.</source>
        <translation>%1: más de lo que explica el escalón de la báscula; la báscula en sí no está comprobada.</translation>
    </message>
    <message>
        <source>%1, weighs %2</source>
        <translation>%1, pesa %2</translation>
    </message>
    <message>
        <source>1 hole at %1</source>
        <translation>1 agujero a %1</translation>
    </message>
    <message numerus="yes">
        <source>%n holes, %1 to %2</source>
        <translation>
            <numerusform>%n agujero, de %1 a %2</numerusform>
            <numerusform>%n agujeros, de %1 a %2</numerusform>
        </translation>
    </message>
    <message>
        <source>bands at %1</source>
        <translation>bandas a %1</translation>
    </message>
    <message>
        <source>%1 each, marked %2</source>
        <translation>%1 por pieza, marca %2</translation>
    </message>
    <message>
        <source>the least it shows: %1, or %2</source>
        <translation>lo mínimo que muestra: %1 o %2</translation>
    </message>
    <message>
        <source>The smallest change the scale shows: %1, or %2.</source>
        <translation>El menor cambio que muestra la báscula: %1 o %2.</translation>
    </message>
</context>
<context>
    <name>usetexts</name>
    <message>
        <source>Her maximum was not lifted with plain iron: %1</source>
        <translation>Su máximo no se levantó solo con hierro: %1</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate it with plain iron.</source>
        <translation>Es del %1. Pruébalo o estímalo solo con hierro.</translation>
    </message>
    <message>
        <source>Her maximum is too old to go by: %1</source>
        <translation>Su máximo es demasiado viejo para guiarse por él: %1</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate it again.</source>
        <translation>Es del %1. Pruébalo o estímalo otra vez.</translation>
    </message>
    <message>
        <source>No maximum of hers is known: %1</source>
        <translation>No se conoce ningún máximo suyo: %1</translation>
    </message>
    <message>
        <source>Test or estimate it first: the cap is a share of it.</source>
        <translation>Pruébalo o estímalo primero: el tope es una parte de él.</translation>
    </message>
    <message>
        <source>Give-or-take counted in, it comes to %1 % of her lowest estimate of %2, and %3 % is your cap.</source>
        <translation>Contado el margen, llega al %1 % de su estimación más baja (%2), y tu tope es el %3 %.</translation>
    </message>
    <message>
        <source>%1 would do.</source>
        <translation>%1 valdría.</translation>
    </message>
    <message>
        <source>No load weighed like this would do.</source>
        <translation>Ninguna carga que se pese así valdría.</translation>
    </message>
    <message>
        <source>It may be over your cap</source>
        <translation>Puede pasar de tu tope</translation>
    </message>
    <message>
        <source>%1 Weigh it better, or take a lighter one: %2</source>
        <translation>%1 Pésalo mejor, o toma algo más ligero: %2</translation>
    </message>
    <message>
        <source>Over your cap</source>
        <translation>Por encima de tu tope</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>may use it</source>
        <translation>puede usarlo</translation>
    </message>
    <message>
        <source>look over first</source>
        <translation>revisar antes</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>ahora no</translation>
    </message>
    <message>
        <source>Its mass is not known</source>
        <translation>No se conoce su masa</translation>
    </message>
    <message>
        <source>It may hold gas</source>
        <translation>Puede tener gas</translation>
    </message>
    <message>
        <source>Ask whoever brought it. Until it is known to be let off nobody lifts, drops or opens it.</source>
        <translation>Pregunta a quien lo trajo. Hasta que se sepa que ya no tiene gas, nadie lo levanta, lo deja caer ni lo abre.</translation>
    </message>
    <message>
        <source>It holds gas</source>
        <translation>Tiene gas</translation>
    </message>
    <message>
        <source>Whoever owns it lets it off. Nobody else opens it, and nobody drops or lifts it until then.</source>
        <translation>Le suelta el gas quien sea su dueño. Nadie más lo abre, y hasta entonces nadie lo deja caer ni lo levanta.</translation>
    </message>
    <message>
        <source>Held against no lift of hers</source>
        <translation>Sin comparar con ningún ejercicio suyo</translation>
    </message>
    <message>
        <source>Say below which lift, and how much of it, such a load may come to; or see for yourself that it suits her.</source>
        <translation>Di abajo a qué ejercicio, y a qué parte de él, puede llegar una carga así; o comprueba tú que le va bien.</translation>
    </message>
    <message>
        <source>Tried: it does not fit the hand</source>
        <translation>Probada: no se ajusta a la mano</translation>
    </message>
    <message>
        <source>Take another, or hold it otherwise.</source>
        <translation>Toma otra, o sujétala de otro modo.</translation>
    </message>
    <message>
        <source>Not tried in the hand</source>
        <translation>Sin probar en la mano</translation>
    </message>
    <message>
        <source>Have it held first. With two hands the little fingers go on the horns.</source>
        <translation>Haz que la sostenga antes. Con dos manos, los meñiques van en los cuernos.</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Anotado</translation>
    </message>
    <message>
        <source>Nobody has looked it over</source>
        <translation>Nadie la ha revisado</translation>
    </message>
    <message>
        <source>Look for wire that shows, cuts in the side, and water in it.</source>
        <translation>Busca alambre a la vista, cortes en el costado y agua dentro.</translation>
    </message>
    <message>
        <source>Does she reach the ground?</source>
        <translation>¿Llega al suelo?</translation>
    </message>
    <message>
        <source>With a flat back and straight arms, hands under the edge. If not, put it on blocks or leave it out.</source>
        <translation>Con la espalda recta y los brazos estirados, las manos bajo el borde. Si no, ponla sobre bloques u omítela.</translation>
    </message>
    <message>
        <source>the usual cautions</source>
        <translation>los avisos de siempre</translation>
    </message>
</context>
<context>
    <name>vaulttexts</name>
    <message>
        <source>One device only, no backup yet</source>
        <translation>Un solo dispositivo, aún sin copia de seguridad</translation>
    </message>
    <message numerus="yes">
        <source>%n entries that had been kept are missing.</source>
        <translation>
            <numerusform>Falta %n entrada que se había guardado.</numerusform>
            <numerusform>Faltan %n entradas que se habían guardado.</numerusform>
        </translation>
    </message>
    <message>
        <source>An older data file was put back, or the storage lost its newest part. Look through what you kept last, and enter again what is not there.</source>
        <translation>Se volvió a poner un archivo de datos más antiguo, o el almacenamiento perdió su parte más nueva. Repasa lo último que guardaste y anota de nuevo lo que no esté.</translation>
    </message>
    <message>
        <source>The list that shows missing entries is gone.</source>
        <translation>La lista que muestra las entradas que faltan ya no está.</translation>
    </message>
    <message>
        <source>It has been written anew, and whether anything was missing before cannot be told. Look through what you kept last.</source>
        <translation>Se ha escrito de nuevo, y no se puede saber si antes faltaba algo. Repasa lo último que guardaste.</translation>
    </message>
    <message>
        <source>This vault comes from another install.</source>
        <translation>Esta caja fuerte viene de otra instalación.</translation>
    </message>
    <message>
        <source>From now on it writes as a device of its own. Do not go on with the old copy as well: each would miss what the other keeps.</source>
        <translation>Desde ahora escribe como un dispositivo propio. No sigas usando también la copia vieja: a cada una le faltaría lo que guarda la otra.</translation>
    </message>
    <message>
        <source>One copy of the key file was damaged.</source>
        <translation>Una copia del archivo de claves estaba dañada.</translation>
    </message>
    <message>
        <source>The other was whole, and the damaged one has been written anew. If this comes again the storage is failing: copy the vault&apos;s folder to another disk.</source>
        <translation>La otra estaba entera, y la dañada se ha escrito de nuevo. Si esto se repite, el almacenamiento está fallando: copia la carpeta de la caja fuerte en otra unidad de disco.</translation>
    </message>
    <message>
        <source>Something may carry the vault&apos;s folder to other devices.</source>
        <translation>Puede que algo lleve la carpeta de la caja fuerte a otros dispositivos.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Where you chose what is carried, leave the vault&apos;s folder out.</source>
        <translation>Dos dispositivos que escriben en una misma caja fuerte la estropearían. Donde elegiste qué se lleva, deja fuera la carpeta de la caja fuerte.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Where you chose what is carried, leave this folder out: %1</source>
        <translation>Dos dispositivos que escriben en una misma caja fuerte la estropearían. Donde elegiste qué se lleva, deja fuera esta carpeta: %1</translation>
    </message>
    <message>
        <source>This device is as good as full.</source>
        <translation>Este dispositivo está prácticamente lleno.</translation>
    </message>
    <message>
        <source>Free some space now, so that what you enter next can be kept.</source>
        <translation>Libera espacio ya, para que se pueda guardar lo próximo que anotes.</translation>
    </message>
    <message>
        <source>Half-typed forms of a newer app are here: %1.</source>
        <translation>Aquí hay formularios a medias de una app más nueva: %1.</translation>
    </message>
    <message>
        <source>They stay as they are. Update the app to go on with them.</source>
        <translation>Se quedan como están. Actualiza la app para seguir con ellos.</translation>
    </message>
    <message>
        <source>The vault&apos;s key file is missing.</source>
        <translation>Falta el archivo de claves de la caja fuerte.</translation>
    </message>
    <message>
        <source>Put vault.key or vault.key.2 back into the vault&apos;s folder, then try again.</source>
        <translation>Vuelve a poner vault.key o vault.key.2 en la carpeta de la caja fuerte e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>Both copies of the key file are damaged.</source>
        <translation>Las dos copias del archivo de claves están dañadas.</translation>
    </message>
    <message>
        <source>No passphrase can open the vault as it is. Put an earlier vault.key back into its folder, then try again.</source>
        <translation>Tal como está la caja fuerte, ninguna frase de acceso puede abrirla. Vuelve a poner un vault.key anterior en su carpeta e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The key file was not written by this app.</source>
        <translation>El archivo de claves no lo escribió esta app.</translation>
    </message>
    <message>
        <source>Somebody may have changed it. Put your own vault.key back into the folder, then try again.</source>
        <translation>Puede que alguien lo haya cambiado. Vuelve a poner tu propio vault.key en la carpeta e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>Key files of two vaults lie in one folder.</source>
        <translation>Hay archivos de claves de dos cajas fuertes en la misma carpeta.</translation>
    </message>
    <message>
        <source>vault.key and vault.key.2 do not belong together. Move the wrong one away, then try again.</source>
        <translation>vault.key y vault.key.2 no van juntos. Saca de ahí el equivocado e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>A newer version of the app wrote this vault.</source>
        <translation>Esta caja fuerte la escribió una versión más nueva de la app.</translation>
    </message>
    <message>
        <source>It is untouched. Update the app, then open it again.</source>
        <translation>Está intacta. Actualiza la app y ábrela de nuevo.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file is missing.</source>
        <translation>Falta el archivo de datos de la caja fuerte.</translation>
    </message>
    <message>
        <source>The key is there, the file it opens is not. Put the vault&apos;s files back into their folder, then try again.</source>
        <translation>La clave está, el archivo que abre no. Vuelve a poner los archivos de la caja fuerte en su carpeta e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file is empty.</source>
        <translation>El archivo de datos de la caja fuerte está vacío.</translation>
    </message>
    <message>
        <source>The storage has lost what was in it, and nothing is written to it. Put an earlier copy in its place, then try again.</source>
        <translation>El almacenamiento perdió lo que contenía, y no se escribe nada en el archivo. Pon en su lugar una copia anterior e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file ends too soon.</source>
        <translation>El archivo de datos de la caja fuerte termina antes de tiempo.</translation>
    </message>
    <message>
        <source>Part of it is gone, and nothing is written to it. Put an earlier copy in its place, then try again.</source>
        <translation>Se perdió una parte, y no se escribe nada en él. Pon en su lugar una copia anterior e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The data file in the vault&apos;s folder is not sealed.</source>
        <translation>El archivo de datos de la carpeta de la caja fuerte no está sellado.</translation>
    </message>
    <message>
        <source>It is none of ours, and is left alone. Put the vault&apos;s own file in its place, then try again.</source>
        <translation>No es nuestro y se deja como está. Pon en su lugar el archivo propio de la caja fuerte e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The data file was written by something else.</source>
        <translation>El archivo de datos lo escribió otro programa.</translation>
    </message>
    <message>
        <source>It is left alone. Put the vault&apos;s own file in its place, then try again.</source>
        <translation>Se deja como está. Pon en su lugar el archivo propio de la caja fuerte e inténtalo de nuevo.</translation>
    </message>
    <message numerus="yes">
        <source>The vault&apos;s data file is damaged: %n entries cannot be read.</source>
        <translation>
            <numerusform>El archivo de datos de la caja fuerte está dañado: no se puede leer %n entrada.</numerusform>
            <numerusform>El archivo de datos de la caja fuerte está dañado: no se pueden leer %n entradas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The vault&apos;s data file is damaged.</source>
        <translation>El archivo de datos de la caja fuerte está dañado.</translation>
    </message>
    <message>
        <source>Your passphrase is right. Nothing is written to the file. Keep the folder as it is, and put an earlier copy in its place.</source>
        <translation>Tu frase de acceso es correcta. No se escribe nada en el archivo. Conserva la carpeta tal como está y pon en su lugar una copia anterior.</translation>
    </message>
    <message>
        <source>The vault could not be brought up to date.</source>
        <translation>No se pudo poner al día la caja fuerte.</translation>
    </message>
    <message>
        <source>It stands as it was. Free some space and try again, or open it with the app you had before.</source>
        <translation>Sigue como estaba. Libera espacio e inténtalo de nuevo, o ábrela con la app que tenías antes.</translation>
    </message>
    <message>
        <source>The app&apos;s database does not do what it should.</source>
        <translation>La base de datos de la app no hace lo que debe.</translation>
    </message>
    <message>
        <source>Nothing has been touched. Install the app anew, then try again.</source>
        <translation>No se ha tocado nada. Instala la app de nuevo e inténtalo otra vez.</translation>
    </message>
    <message>
        <source>That does not open the vault.</source>
        <translation>Eso no abre la caja fuerte.</translation>
    </message>
    <message>
        <source>The vault itself is whole. Look out for capitals and spaces, and type it again.</source>
        <translation>La caja fuerte en sí está entera. Fíjate en las mayúsculas y los espacios, y escríbelo de nuevo.</translation>
    </message>
    <message>
        <source>This vault has no such way in.</source>
        <translation>Esta caja fuerte no tiene ese acceso.</translation>
    </message>
    <message>
        <source>Use the passphrase, or else the recovery code.</source>
        <translation>Usa la frase de acceso o, si no, el código de rescate.</translation>
    </message>
    <message>
        <source>That cannot be a passphrase or recovery code of this vault.</source>
        <translation>Eso no puede ser una frase de acceso ni un código de rescate de esta caja fuerte.</translation>
    </message>
    <message>
        <source>It is too long, or not complete. Nothing was cut off: type it again.</source>
        <translation>Es demasiado largo o no está completo. No se cortó nada: escríbelo de nuevo.</translation>
    </message>
    <message>
        <source>There is no memory left to make the key.</source>
        <translation>No queda memoria para crear la clave.</translation>
    </message>
    <message>
        <source>Close other programs, then try again.</source>
        <translation>Cierra otros programas e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>There is no vault here any more.</source>
        <translation>Aquí ya no hay ninguna caja fuerte.</translation>
    </message>
    <message>
        <source>If you know where its folder went, put it back and try again. Otherwise make a new one.</source>
        <translation>Si sabes adónde fue a parar su carpeta, devuélvela a su sitio e inténtalo de nuevo. Si no, crea una caja fuerte nueva.</translation>
    </message>
    <message>
        <source>There is a vault here already.</source>
        <translation>Aquí ya hay una caja fuerte.</translation>
    </message>
    <message>
        <source>No second one was made. Try again, and unlock the one that is there.</source>
        <translation>No se creó otra. Inténtalo de nuevo y abre la que hay.</translation>
    </message>
    <message>
        <source>The vault&apos;s folder is carried to other devices.</source>
        <translation>La carpeta de la caja fuerte se lleva a otros dispositivos.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Move the folder to a place that stays here, then try again.</source>
        <translation>Dos dispositivos que escriben en una misma caja fuerte la estropearían. Mueve la carpeta a un sitio que se quede aquí e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>The vault is open already.</source>
        <translation>La caja fuerte ya está abierta.</translation>
    </message>
    <message>
        <source>Steelyard runs a second time on this device. Close the other window, then try again.</source>
        <translation>Steelyard está abierto dos veces en este dispositivo. Cierra la otra ventana e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>Nothing can be written into the vault&apos;s folder.</source>
        <translation>No se puede escribir nada en la carpeta de la caja fuerte.</translation>
    </message>
    <message>
        <source>Whatever you enter could not be kept. Make the folder writable, then try again.</source>
        <translation>Nada de lo que anotes se podría guardar. Haz que se pueda escribir en la carpeta e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>Not saved: %1 MB needed, %2 MB free.</source>
        <translation>No guardado: hacen falta %1 MB, hay %2 MB libres.</translation>
    </message>
    <message>
        <source>Not saved: this device is full.</source>
        <translation>No guardado: este dispositivo está lleno.</translation>
    </message>
    <message>
        <source>Your entry is still on the page. Free some space, then do it again.</source>
        <translation>Tu entrada sigue en la página. Libera espacio y hazlo de nuevo.</translation>
    </message>
    <message>
        <source>Not saved: the storage gave an error.</source>
        <translation>No guardado: el almacenamiento dio un error.</translation>
    </message>
    <message>
        <source>Your entry is still on the page, and nothing kept before is gone. Do it again.</source>
        <translation>Tu entrada sigue en la página, y nada de lo guardado antes se ha perdido. Hazlo de nuevo.</translation>
    </message>
    <message>
        <source>The storage gave an error while reading.</source>
        <translation>El almacenamiento dio un error al leer.</translation>
    </message>
    <message>
        <source>Nothing has been changed. Try again; if it comes back, copy the vault&apos;s folder to another disk.</source>
        <translation>No se ha cambiado nada. Inténtalo de nuevo; si se repite, copia la carpeta de la caja fuerte en otra unidad de disco.</translation>
    </message>
    <message>
        <source>Not saved: the vault is locked.</source>
        <translation>No guardado: la caja fuerte está bloqueada.</translation>
    </message>
    <message>
        <source>Unlock it, then do it again.</source>
        <translation>Ábrela y hazlo de nuevo.</translation>
    </message>
    <message>
        <source>A vault is open here already.</source>
        <translation>Aquí ya hay una caja fuerte abierta.</translation>
    </message>
    <message>
        <source>Lock it first, then try again.</source>
        <translation>Bloquéala primero e inténtalo de nuevo.</translation>
    </message>
    <message>
        <source>Not saved: that is too long.</source>
        <translation>No guardado: es demasiado largo.</translation>
    </message>
    <message>
        <source>Your entry is still on the page. Make the note shorter, then do it again.</source>
        <translation>Tu entrada sigue en la página. Acorta la nota y hazlo de nuevo.</translation>
    </message>
    <message>
        <source>Not saved: this athlete has been erased.</source>
        <translation>No guardado: los datos de esta persona se han borrado.</translation>
    </message>
    <message>
        <source>Nothing more is written about somebody erased. Add the person anew.</source>
        <translation>No se escribe nada más sobre alguien borrado. Añade a la persona de nuevo.</translation>
    </message>
    <message>
        <source>This is no example: it is somebody&apos;s own vault.</source>
        <translation>Esto no es un ejemplo: es la caja fuerte de alguien.</translation>
    </message>
    <message>
        <source>Nothing was removed: only an example can be taken away.</source>
        <translation>No se quitó nada: solo se puede quitar un ejemplo.</translation>
    </message>
    <message>
        <source>Something more urgent came between.</source>
        <translation>Se interpuso algo más urgente.</translation>
    </message>
    <message>
        <source>Nothing is lost. Do it again.</source>
        <translation>No se ha perdido nada. Hazlo de nuevo.</translation>
    </message>
    <message>
        <source>The recovery code is not complete.</source>
        <translation>El código de rescate no está completo.</translation>
    </message>
    <message>
        <source>It has five groups. Type on where the first one is missing.</source>
        <translation>Tiene cinco grupos. Sigue escribiendo donde falta el primero.</translation>
    </message>
    <message>
        <source>A group of the recovery code has a mistake.</source>
        <translation>Un grupo del código de rescate tiene un error.</translation>
    </message>
    <message>
        <source>Compare each group with your paper, and put right the one that differs.</source>
        <translation>Compara cada grupo con tu papel y corrige el que sea distinto.</translation>
    </message>
    <message>
        <source>The vault is locked. The app could not start anew.</source>
        <translation>La caja fuerte está bloqueada. La app no pudo arrancar de nuevo.</translation>
    </message>
    <message>
        <source>Close this window: until you do, names may still be in this device&apos;s memory.</source>
        <translation>Cierra esta ventana: hasta que lo hagas, puede que aún queden nombres en la memoria de este dispositivo.</translation>
    </message>
</context>
<context>
    <name>venuetexts</name>
    <message>
        <source>%1, was due back on %2</source>
        <translation>%1, debía devolverse el %2</translation>
    </message>
    <message>
        <source>%1, back by %2</source>
        <translation>%1, devolver el %2 a más tardar</translation>
    </message>
    <message>
        <source>borrowed from %1</source>
        <translation>tomado en préstamo de %1</translation>
    </message>
    <message>
        <source>lent to %1</source>
        <translation>prestado a %1</translation>
    </message>
    <message>
        <source>hangs</source>
        <translation>cuelga</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>both hang</source>
        <translation>cuelgan ambas</translation>
    </message>
    <message>
        <source>one free</source>
        <translation>una libre</translation>
    </message>
    <message>
        <source>both free</source>
        <translation>ambas libres</translation>
    </message>
</context>
</TS>
