<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AgreementPage</name>
    <message>
        <source>Guardian&apos;s agreement</source>
        <translation>Ein­willigung der Eltern</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>AGREED</source>
        <translation>EIN­GEWILLIGT</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>Who agreed</source>
        <translation>Wer ein­gewilligt hat</translation>
    </message>
    <message>
        <source>a parent or guardian, by name</source>
        <translation>ein Elternteil oder Vormund, mit Namen</translation>
    </message>
    <message>
        <source>Say what is kept: name, squad, year of birth, body mass, height, loads and notes, on this device, sealed. Say who sees it, and that they can have it taken out again.</source>
        <translation>Sag, was behalten wird: Name, Kader, Geburtsjahr, Körpermasse, Größe, Lasten und Notizen, auf diesem Gerät, versiegelt. Sag, wer es sieht, und dass sie es wieder heraus­nehmen lassen können.</translation>
    </message>
    <message>
        <source>Local law and your federation or school decide what you need, and may ask for more, in writing or from the athlete as well.</source>
        <translation>Das Recht vor Ort und dein Verband oder deine Schule entscheiden, was du brauchst, und können mehr verlangen, schriftlich oder auch von der Athletin.</translation>
    </message>
</context>
<context>
    <name>AidEditor</name>
    <message>
        <source>bar and collars with it; 0 where it goes slack</source>
        <translation>Stange und Verschlüsse mitgezählt; 0, wo sie schlaff wird</translation>
    </message>
    <message>
        <source>higher than where it touches the chest</source>
        <translation>höher als da, wo sie die Brust berührt</translation>
    </message>
    <message>
        <source>Helps %1</source>
        <translation>Hilft %1</translation>
    </message>
    <message>
        <source>Help by height: not known yet</source>
        <translation>Hilfe nach Höhe: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Reading %1 does not go with the others: higher up it helps less</source>
        <translation>Ablesung %1 passt nicht zu den anderen: weiter oben hilft die Bankhilfe weniger</translation>
    </message>
    <message>
        <source>%1, left out</source>
        <translation>%1, weg­gelassen</translation>
    </message>
    <message>
        <source>%1, odd</source>
        <translation>%1, auf­fällig</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>gemessen bis %1</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weg­gelassen</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>auf­fällig</translation>
    </message>
    <message>
        <source>Bench aid</source>
        <translation>Bankhilfe</translation>
    </message>
</context>
<context>
    <name>AidGuide</name>
    <message>
        <source>Measure a bench aid</source>
        <translation>Bankhilfe messen</translation>
    </message>
    <message>
        <source>What rests on it?</source>
        <translation>Was liegt darauf?</translation>
    </message>
    <message>
        <source>How high over the chest?</source>
        <translation>Wie hoch über der Brust?</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>Bar, collars and plates: all that the aid carries by itself.</source>
        <translation>Stange, Verschlüsse und Scheiben: alles, was die Bankhilfe allein trägt.</translation>
    </message>
    <message>
        <source>From where the bar touches the chest up to where it rests. Her hands stay round the bar.</source>
        <translation>Von da, wo die Stange die Brust berührt, hinauf bis dahin, wo sie ruht. Ihre Hände bleiben um die Stange.</translation>
    </message>
    <message>
        <source>First where it begins to help</source>
        <translation>Zuerst, wo sie zu helfen beginnt</translation>
    </message>
    <message>
        <source>Key 0: let the bar down by hand until the aid just comes taut, and read the height.</source>
        <translation>Tippe 0 ein: Lass die Stange von Hand ab, bis sich die Bankhilfe gerade eben spannt, und lies die Höhe ab.</translation>
    </message>
    <message>
        <source>Go down to the chest</source>
        <translation>Geh runter bis zur Brust</translation>
    </message>
    <message>
        <source>Put on what just brings the bar to touch it: height 0. There it helps most.</source>
        <translation>Leg so viel auf, dass die Stange sie gerade eben berührt: Höhe 0. Dort hilft die Bankhilfe am meisten.</translation>
    </message>
    <message>
        <source>About %1, to rest at %2</source>
        <translation>Etwa %1: ruht bei %2</translation>
    </message>
    <message>
        <source>Go for about %1 above the chest</source>
        <translation>Nimm etwa %1 über der Brust</translation>
    </message>
    <message>
        <source>There the curve is least sure.</source>
        <translation>Dort ist die Kurve am un­sichersten.</translation>
    </message>
    <message>
        <source>Enough readings.</source>
        <translation>Genug Ablesungen.</translation>
    </message>
    <message>
        <source>Where it goes slack was not read: above the highest reading its help is not known.</source>
        <translation>Wo sie schlaff wird, wurde nicht abgelesen: Über der höchsten Ablesung ist ihre Hilfe nicht bekannt.</translation>
    </message>
    <message>
        <source>It was not read at the chest: below the lowest reading its help is not known.</source>
        <translation>An der Brust wurde nicht abgelesen: Unter der tiefsten Ablesung ist ihre Hilfe nicht bekannt.</translation>
    </message>
    <message>
        <source>One more at about %1 above the chest would make it surer.</source>
        <translation>Noch eine bei etwa %1 über der Brust würde es sicherer machen.</translation>
    </message>
</context>
<context>
    <name>AidMeasured</name>
    <message>
        <source>strap</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Brust</translation>
    </message>
</context>
<context>
    <name>AidPage</name>
    <message>
        <source>Measure a bench aid</source>
        <translation>Bankhilfe messen</translation>
    </message>
    <message>
        <source>rest plates on it, read the height</source>
        <translation>Scheiben auflegen, Höhe ablesen</translation>
    </message>
    <message>
        <source>Reading %1, mass: %2</source>
        <translation>Ablesung %1, Masse: %2</translation>
    </message>
    <message>
        <source>Reading %1, height: %2</source>
        <translation>Ablesung %1, Höhe: %2</translation>
    </message>
</context>
<context>
    <name>AidStepsPage</name>
    <message>
        <source>Looked over: begin</source>
        <translation>Durch­gesehen: los</translation>
    </message>
    <message>
        <source>She lies under a bar that only rubber carries</source>
        <translation>Sie liegt unter einer Stange, die nur von Gummi getragen wird</translation>
    </message>
    <message>
        <source>Look it over, stretched by hand: a cut, a thin place or a loose seam, and it is not measured but thrown away.</source>
        <translation>Sieh sie durch, von Hand gedehnt: Hat sie einen Schnitt, eine dünne Stelle oder eine lose Naht, wird sie nicht gemessen, sondern weggeworfen.</translation>
    </message>
    <message>
        <source>Safeties in, just under the lowest height you mean to read, tried with the empty bar. A spotter at each end.</source>
        <translation>Sicherheits­ablagen rein, knapp unter der tiefsten Höhe, die du ablesen willst, mit leerer Stange probiert. An jedem Ende ein Helfer.</translation>
    </message>
    <message>
        <source>Her hands stay closed round the bar. Two helpers let it down and lift it off at once after each reading.</source>
        <translation>Ihre Hände bleiben fest um die Stange. Zwei Helfer lassen die Stange ab und heben sie nach jeder Ablesung sofort wieder weg.</translation>
    </message>
    <message>
        <source>Begin with nothing on it and go down in small steps. It holds for her and this way of wearing it.</source>
        <translation>Fang ohne Scheiben an und geh in kleinen Schritten runter. Es gilt für sie und für diese Art, die Bankhilfe zu tragen.</translation>
    </message>
</context>
<context>
    <name>AlongPage</name>
    <message>
        <source>Take along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>to %1, for now</source>
        <translation>nach %1, vorerst</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>There is no kit elsewhere to take along.</source>
        <translation>Anderswo gibt es kein Material zum Mitnehmen.</translation>
    </message>
    <message>
        <source>Tap what comes along. It is the same thing, so its measurements come with it; where it belongs is kept, and a tap sends it back.</source>
        <translation>Tippe an, was mitkommt. Es ist dasselbe Stück, also kommen seine Messungen mit; wohin es gehört, bleibt vermerkt, und Antippen schickt es zurück.</translation>
    </message>
    <message>
        <source>comes along</source>
        <translation>kommt mit</translation>
    </message>
    <message>
        <source>goes back</source>
        <translation>geht zurück</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>nicht hier</translation>
    </message>
</context>
<context>
    <name>AlongView</name>
    <message>
        <source>belongs to no venue</source>
        <translation>gehört zu keinem Ort</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>gehört zu %1</translation>
    </message>
    <message>
        <source>%1, at %2 now</source>
        <translation>%1, jetzt in %2</translation>
    </message>
    <message numerus="yes">
        <source>%n come along</source>
        <translation>
            <numerusform>%n kommt mit</numerusform>
            <numerusform>%n kommen mit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n go back</source>
        <translation>
            <numerusform>%n geht zurück</numerusform>
            <numerusform>%n gehen zurück</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>tick what comes along</source>
        <translation>kreuze an, was mitkommt</translation>
    </message>
</context>
<context>
    <name>AnswerCard</name>
    <message>
        <source>iron: %1</source>
        <translation>Eisen: %1</translation>
    </message>
    <message>
        <source>Hang this one</source>
        <translation>Das hier anhängen</translation>
    </message>
</context>
<context>
    <name>ArrivalPage</name>
    <message>
        <source>What is here</source>
        <translation>Was hier ist</translation>
    </message>
    <message>
        <source>choose a venue in Kit first</source>
        <translation>zuerst unter Material einen Ort wählen</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>WEITER</translation>
    </message>
    <message>
        <source>Something that is not on the list</source>
        <translation>Etwas, das nicht auf der Liste steht</translation>
    </message>
    <message>
        <source>Leave and come back: what was begun waits as it was typed.</source>
        <translation>Geh und komm wieder: Was begonnen ist, wartet, wie es eingetippt wurde.</translation>
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
        <translation>noch nicht auf der Liste</translation>
    </message>
    <message>
        <source>begun, not kept</source>
        <translation>begonnen, nicht behalten</translation>
    </message>
    <message>
        <source>%1, out of use</source>
        <translation>%1, gesperrt</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>Nothing is on the list yet</source>
        <translation>Noch steht nichts auf der Liste</translation>
    </message>
    <message>
        <source>%1 of %2 are known</source>
        <translation>%1 von %2 sind bekannt</translation>
    </message>
</context>
<context>
    <name>AskSheet</name>
    <message>
        <source>NEXT</source>
        <translation>WEITER</translation>
    </message>
    <message>
        <source>IT IS RIGHT</source>
        <translation>ES STIMMT</translation>
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
        <translation>noch keine</translation>
    </message>
    <message>
        <source>the height has changed since they were taken</source>
        <translation>die Größe hat sich seitdem geändert</translation>
    </message>
    <message>
        <source>may have grown since they were taken</source>
        <translation>ist seitdem vielleicht gewachsen</translation>
    </message>
    <message>
        <source>Born in</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>comes before body mass, height and notes</source>
        <translation>kommt vor Körpermasse, Größe und Notizen</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>AthletePage</name>
    <message>
        <source>New athlete</source>
        <translation>Neue Athletin</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Bar marks</source>
        <translation>Stangen­marken</translation>
    </message>
    <message>
        <source>Set-ups</source>
        <translation>Aufbauten</translation>
    </message>
    <message>
        <source>Take bar marks again</source>
        <translation>Stangen­marken neu nehmen</translation>
    </message>
    <message>
        <source>Measured by day</source>
        <translation>Messungen nach Tag</translation>
    </message>
    <message>
        <source>look back, or put one right</source>
        <translation>nachsehen oder eine berichtigen</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Unter 18</translation>
    </message>
    <message>
        <source>Until a parent or guardian has agreed, only name, squad and loads are kept. Your local rules may ask for more.</source>
        <translation>Bis ein Elternteil oder Vormund ein­gewilligt hat, werden nur Name, Kader und Lasten behalten. Die Regeln bei dir vor Ort können mehr verlangen.</translation>
    </message>
    <message>
        <source>Guardian&apos;s agreement</source>
        <translation>Ein­willigung der Eltern</translation>
    </message>
    <message>
        <source>who agreed, and when</source>
        <translation>wer ein­gewilligt hat, und wann</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht vermerkt</translation>
    </message>
    <message>
        <source>Notes; no diagnoses</source>
        <translation>Notizen; keine Diagnosen</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>What is here</source>
        <translation>Was hier ist</translation>
    </message>
    <message>
        <source>and she may use</source>
        <translation>und sie benutzen darf</translation>
    </message>
</context>
<context>
    <name>BandEditor</name>
    <message>
        <source>Length at rest</source>
        <translation>Ruhelänge</translation>
    </message>
    <message>
        <source>hook to hook, hanging loose</source>
        <translation>Haken zu Haken, lose hängend</translation>
    </message>
    <message>
        <source>what hangs on it</source>
        <translation>was daran hängt</translation>
    </message>
    <message>
        <source>hook to hook</source>
        <translation>Haken zu Haken</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>At rest it is %1: with a load on it is longer.</source>
        <translation>In Ruhe ist es %1: Mit Last daran ist es länger.</translation>
    </message>
    <message>
        <source>Pull by length: not known yet</source>
        <translation>Zug nach Länge: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Pulls %1 at %2</source>
        <translation>Zieht %1 bei %2</translation>
    </message>
    <message>
        <source>This curve falls between the readings. Choose another, or hang again.</source>
        <translation>Diese Kurve fällt zwischen den Ablesungen ab. Wähle eine andere oder häng noch einmal.</translation>
    </message>
    <message>
        <source>%1, left out</source>
        <translation>%1, weg­gelassen</translation>
    </message>
    <message>
        <source>%1, odd</source>
        <translation>%1, auf­fällig</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>gemessen bis %1</translation>
    </message>
    <message>
        <source>a straight line</source>
        <translation>eine gerade Linie</translation>
    </message>
    <message>
        <source>a bent line</source>
        <translation>eine gekrümmte Linie</translation>
    </message>
    <message>
        <source>rubber&apos;s own curve</source>
        <translation>die eigene Kurve von Gummi</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, your choice.</source>
        <translation>Durch die Ablesungen gelegt: %1, deine Wahl.</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, until there are five of them.</source>
        <translation>Durch die Ablesungen gelegt: %1, bis es fünf sind.</translation>
    </message>
    <message>
        <source>Laid through the readings: %1, which fits best.</source>
        <translation>Durch die Ablesungen gelegt: %1, das passt am besten.</translation>
    </message>
    <message>
        <source>Hanging %1 lies %2 over the line of the others</source>
        <translation>Hängung %1 liegt %2 über der Linie der anderen</translation>
    </message>
    <message>
        <source>Hanging %1 lies %2 under the line of the others</source>
        <translation>Hängung %1 liegt %2 unter der Linie der anderen</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>weg­gelassen</translation>
    </message>
    <message>
        <source>odd</source>
        <translation>auf­fällig</translation>
    </message>
    <message>
        <source>read while taking off</source>
        <translation>beim Abnehmen abgelesen</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Band, %1 at rest</source>
        <translation>Band, %1 in Ruhe</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
</context>
<context>
    <name>BandGuide</name>
    <message>
        <source>How long is it at rest?</source>
        <translation>Wie lang ist es in Ruhe?</translation>
    </message>
    <message>
        <source>What is left on it?</source>
        <translation>Was hängt noch daran?</translation>
    </message>
    <message>
        <source>What hangs on it?</source>
        <translation>Was hängt daran?</translation>
    </message>
    <message>
        <source>How long is it now?</source>
        <translation>Wie lang ist es jetzt?</translation>
    </message>
    <message>
        <source>Measure a band</source>
        <translation>Band messen</translation>
    </message>
    <message>
        <source>first look it over</source>
        <translation>erst durchsehen</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>nichts daran</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>readings: %1</source>
        <translation>Ablesungen: %1</translation>
    </message>
    <message>
        <source>Hanging loose. The tape runs from hook to hook, inside.</source>
        <translation>Lose hängend. Das Maßband läuft von Haken zu Haken, innen.</translation>
    </message>
    <message>
        <source>Stand out of the band&apos;s line.</source>
        <translation>Bleib aus der Zuglinie des Bands.</translation>
    </message>
    <message>
        <source>Take it off piece by piece. Stand out of the band&apos;s line.</source>
        <translation>Nimm Stück für Stück ab. Bleib aus der Zuglinie des Bands.</translation>
    </message>
    <message>
        <source>Plates of known mass, the strap with them. Stand out of the band&apos;s line.</source>
        <translation>Scheiben mit bekannter Masse, den Riemen mitgezählt. Bleib aus der Zuglinie des Bands.</translation>
    </message>
    <message>
        <source>Hook to hook, once it hangs still.</source>
        <translation>Haken zu Haken, sobald es ruhig hängt.</translation>
    </message>
    <message>
        <source>Good enough up to %1.</source>
        <translation>Gut genug bis %1.</translation>
    </message>
    <message>
        <source>One more at about %1 would make it surer.</source>
        <translation>Noch eine bei etwa %1 würde es sicherer machen.</translation>
    </message>
    <message>
        <source>Good enough as it is</source>
        <translation>Gut genug, wie es ist</translation>
    </message>
</context>
<context>
    <name>BandPage</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Measure a band</source>
        <translation>Band messen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>hang plates, read the length</source>
        <translation>Scheiben anhängen, Länge ablesen</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Hang a mass</source>
        <translation>Masse anhängen</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>best</source>
        <translation>beste</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>gekrümmt</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>Gummi</translation>
    </message>
    <message>
        <source>Hang it again, or leave it out.</source>
        <translation>Häng sie noch einmal oder lass sie weg.</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>zwei gleiche</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>The second stands on this one&apos;s measurement, with 3 % more doubt about its length. Measure it too and hang each on its own side to be surer.</source>
        <translation>Das zweite stützt sich auf die Messung von diesem, mit 3 % mehr Zweifel an der Länge. Miss es auch und häng jedes auf seine Seite, dann ist es sicherer.</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Name, wenn du einen gibst</translation>
    </message>
</context>
<context>
    <name>BandStepsPage</name>
    <message>
        <source>Looked over: begin</source>
        <translation>Durch­gesehen: los</translation>
    </message>
    <message>
        <source>That is enough</source>
        <translation>Das reicht</translation>
    </message>
    <message>
        <source>Next reading</source>
        <translation>Nächste Ablesung</translation>
    </message>
    <message>
        <source>adding</source>
        <translation>beim Auflegen</translation>
    </message>
    <message>
        <source>taking off</source>
        <translation>beim Abnehmen</translation>
    </message>
    <message>
        <source>A stretched band stores energy</source>
        <translation>Ein gedehntes Band speichert Energie</translation>
    </message>
    <message>
        <source>Look it over, stretched by hand: a cut or a crack, and it is not measured but thrown away.</source>
        <translation>Sieh es durch, von Hand gedehnt: Hat es einen Schnitt oder einen Riss, wird es nicht gemessen, sondern weggeworfen.</translation>
    </message>
    <message>
        <source>Hang it from something that holds more than what goes on it; a rack is bolted or weighed down.</source>
        <translation>Häng es an etwas, das mehr hält, als daran kommt; ein Rack ist verschraubt oder beschwert.</translation>
    </message>
    <message>
        <source>Stand out of its line. Put plates on low over the floor, and never let go of a stretched band.</source>
        <translation>Bleib aus seiner Zuglinie. Häng Scheiben dicht über dem Boden an und lass nie ein gedehntes Band los.</translation>
    </message>
    <message>
        <source>A scale in between carries no more than it is made for.</source>
        <translation>Eine Waage dazwischen trägt nicht mehr, als wofür sie gemacht ist.</translation>
    </message>
    <message>
        <source>One more length</source>
        <translation>Noch eine Länge</translation>
    </message>
    <message>
        <source>Read while taking off</source>
        <translation>Beim Abnehmen ablesen</translation>
    </message>
</context>
<context>
    <name>BarEditor</name>
    <message>
        <source>Bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>weighed, sleeves and all</source>
        <translation>gewogen, samt Hülsen</translation>
    </message>
    <message>
        <source>its own mass, sleeves and all</source>
        <translation>ihre eigene Masse, samt Hülsen</translation>
    </message>
    <message>
        <source>Collars, both</source>
        <translation>Verschlüsse, beide</translation>
    </message>
    <message>
        <source>Room on one sleeve</source>
        <translation>Platz auf einer Hülse</translation>
    </message>
    <message>
        <source>for plates; may be left out</source>
        <translation>für Scheiben; kannst du weglassen</translation>
    </message>
    <message>
        <source>%1 cannot be hung with the plates here.</source>
        <translation>%1 lässt sich mit den Scheiben hier nicht auflegen.</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message numerus="yes">
        <source>%n plates, weighed: %1 each</source>
        <translation>
            <numerusform>%n Scheibe, gewogen: je %1</numerusform>
            <numerusform>%n Scheiben, gewogen: je %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n plates</source>
        <translation>
            <numerusform>%n Scheibe</numerusform>
            <numerusform>%n Scheiben</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BarPage</name>
    <message>
        <source>Bar and plates</source>
        <translation>Stange und Scheiben</translation>
    </message>
    <message>
        <source>what is here to hang</source>
        <translation>was hier zum Auflegen da ist</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Plates weigh</source>
        <translation>Scheiben wiegen</translation>
    </message>
    <message>
        <source>as marked</source>
        <translation>laut Aufschrift</translation>
    </message>
    <message>
        <source>2 % either way</source>
        <translation>2 % in beide Richtungen</translation>
    </message>
    <message>
        <source>Weighed, or made to a competition standard.</source>
        <translation>Gewogen oder nach Wettkampf­norm gemacht.</translation>
    </message>
    <message>
        <source>Gym plates nobody has weighed: our own allowance.</source>
        <translation>Scheiben aus dem Kraftraum, die niemand gewogen hat: unsere eigene Toleranz.</translation>
    </message>
    <message>
        <source>Other plates</source>
        <translation>Andere Scheiben</translation>
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
        <translation>Zuerst die Übung wählen.</translation>
    </message>
    <message>
        <source>No maximum of that lift is known yet: test or estimate it, and the cap is known.</source>
        <translation>Von dieser Übung ist noch kein Maximum bekannt: Teste oder schätze es, dann ist die Obergrenze bekannt.</translation>
    </message>
    <message>
        <source>With its give-or-take at most %1, by her lowest estimate of %2.</source>
        <translation>Samt Mehr oder Weniger höchstens %1, nach ihrer niedrigsten Schätzung vom %2.</translation>
    </message>
    <message>
        <source>How much of it</source>
        <translation>Wie viel davon</translation>
    </message>
    <message>
        <source>of her lowest estimate</source>
        <translation>ihrer niedrigsten Schätzung</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>CapPage</name>
    <message>
        <source>%1: held against</source>
        <translation>%1: woran gemessen wird</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Benutzen</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Of which lift of hers</source>
        <translation>Von welcher ihrer Übungen</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>nicht gewählt</translation>
    </message>
    <message>
        <source>How much of it</source>
        <translation>Wie viel davon</translation>
    </message>
    <message>
        <source>Seventy per cent is ours to begin with: common practice, no source. Held against it is the load with its give-or-take.</source>
        <translation>Siebzig Prozent sind unser Anfang: übliche Praxis, keine Quelle. Daran gemessen wird die Last mit ihrem Mehr oder Weniger.</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>Looked over</source>
        <translation>Durch­gesehen</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>durch­gesehen</translation>
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
        <translation>Länge</translation>
    </message>
    <message>
        <source>first link to last, pulled straight</source>
        <translation>erstes bis letztes Glied, gerade gezogen</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>all of it, on the scale</source>
        <translation>die ganze Kette, an der Waage</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Drahtdicke</translation>
    </message>
    <message>
        <source>its real thickness, not the trade size</source>
        <translation>die echte Dicke, nicht das Nennmaß</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>inside length of one link</source>
        <translation>innere Länge eines Glieds</translation>
    </message>
    <message>
        <source>Inner width</source>
        <translation>Innere Breite</translation>
    </message>
    <message>
        <source>inside width of one link</source>
        <translation>innere Breite eines Glieds</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Mass per metre: not known yet</source>
        <translation>Masse pro Meter: noch nicht bekannt</translation>
    </message>
    <message>
        <source>It comes off the floor a link at a time: %1.</source>
        <translation>Sie kommt Glied für Glied vom Boden: %1.</translation>
    </message>
    <message>
        <source>Chain, %1, %2</source>
        <translation>Kette, %1, %2</translation>
    </message>
    <message>
        <source>Chain, %1</source>
        <translation>Kette, %1</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>Kette</translation>
    </message>
</context>
<context>
    <name>ChainGuide</name>
    <message>
        <source>How long is it?</source>
        <translation>Wie lang ist das Stück?</translation>
    </message>
    <message>
        <source>What does it weigh?</source>
        <translation>Was wiegt das Stück?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>Wie fein zeigt die Waage?</translation>
    </message>
    <message>
        <source>How thick is the wire?</source>
        <translation>Wie dick ist der Draht?</translation>
    </message>
    <message>
        <source>How long is a link inside?</source>
        <translation>Wie lang ist ein Glied innen?</translation>
    </message>
    <message>
        <source>How wide is a link inside?</source>
        <translation>Wie breit ist ein Glied innen?</translation>
    </message>
    <message>
        <source>Measure a chain</source>
        <translation>Kette messen</translation>
    </message>
    <message>
        <source>step 1</source>
        <translation>Schritt 1</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Straight on the floor, first link to last.</source>
        <translation>Gerade auf dem Boden, erstes bis letztes Glied.</translation>
    </message>
    <message>
        <source>All of it on the scale and off the floor; read when it hangs still. Not more than the scale is made for, feet clear.</source>
        <translation>Die ganze Kette an die Waage, weg vom Boden; ablesen, wenn sie ruhig hängt. Nicht mehr, als wofür die Waage gemacht ist, Füße weg.</translation>
    </message>
    <message>
        <source>Across the round of one link: its real thickness, not the trade size.</source>
        <translation>Quer über das Rund eines Glieds: die echte Dicke, nicht das Nennmaß.</translation>
    </message>
    <message>
        <source>Inside, end to end of one link.</source>
        <translation>Innen, von Ende zu Ende eines Glieds.</translation>
    </message>
    <message>
        <source>A long link: take the middle between its least inner width and its greatest outer width less two wires.</source>
        <translation>Bei einem langen Glied: Nimm die Mitte zwischen seiner kleinsten inneren Breite und seiner größten äußeren Breite minus zwei Drahtdicken.</translation>
    </message>
    <message>
        <source>Inside, side to side of one link.</source>
        <translation>Innen, von Seite zu Seite eines Glieds.</translation>
    </message>
</context>
<context>
    <name>ChainPage</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Measure a chain</source>
        <translation>Kette messen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Name, wenn du einen gibst</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>weighing it</source>
        <translation>wiegen</translation>
    </message>
    <message>
        <source>its links</source>
        <translation>Glied ausmessen</translation>
    </message>
    <message>
        <source>Gauged within 3 %. Weighing is better. Of a long-link chain take the middle between the least inner and the greatest outer width, less two wires.</source>
        <translation>Ausgemessen auf 3 % genau. Wiegen ist besser. Bei einer lang­gliedrigen Kette nimm die Mitte zwischen der kleinsten inneren und der größten äußeren Breite, minus zwei Drahtdicken.</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>zwei gleiche</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
</context>
<context>
    <name>ChainStepsPage</name>
    <message>
        <source>What hangs of a chain is what it weighs, so its mass by length counts. Weighing is surer: gauged is within 6 %.</source>
        <translation>Von einer Kette wiegt, was hängt, also zählt ihre Masse nach Länge. Wiegen ist sicherer: Ausgemessen stimmt es auf 6 %.</translation>
    </message>
    <message>
        <source>Weigh it</source>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>scale and tape</source>
        <translation>Waage und Maßband</translation>
    </message>
    <message>
        <source>Gauge one link</source>
        <translation>Ein Glied ausmessen</translation>
    </message>
    <message>
        <source>caliper and tape</source>
        <translation>Mess­schieber und Maßband</translation>
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
        <translation>gewählt</translation>
    </message>
</context>
<context>
    <name>ClearanceEditor</name>
    <message>
        <source>Choose the lift.</source>
        <translation>Wähle die Übung.</translation>
    </message>
    <message>
        <source>Choose the method.</source>
        <translation>Wähle die Methode.</translation>
    </message>
    <message>
        <source>until it is taken back</source>
        <translation>bis sie zurück­genommen wird</translation>
    </message>
</context>
<context>
    <name>ClearancePage</name>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>is cleared for</source>
        <translation>ist freigegeben für</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Freigaben</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurück­nehmen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>sobald gesagt ist, wer</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>nicht gewählt</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Methode</translation>
    </message>
    <message>
        <source>Who gives it</source>
        <translation>Wer sie erteilt</translation>
    </message>
    <message>
        <source>whoever is licensed or responsible here</source>
        <translation>wer hier dazu befugt oder verantwortlich ist</translation>
    </message>
    <message>
        <source>She may be under age. Is it given knowing that?</source>
        <translation>Sie ist vielleicht minderjährig. Wird sie in diesem Wissen erteilt?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>yes, by name</source>
        <translation>ja, nament­lich</translation>
    </message>
    <message>
        <source>Nothing medical belongs here. What a clinician decides goes before it, and so do local rules.</source>
        <translation>Nichts Medizinisches gehört hierher. Was Ärzte entscheiden, geht vor, und örtliche Regeln auch.</translation>
    </message>
</context>
<context>
    <name>ClearancesPage</name>
    <message>
        <source>cleared for</source>
        <translation>freigegeben für</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>CLEARED FOR MORE</source>
        <translation>FÜR MEHR FREIGEBEN</translation>
    </message>
    <message>
        <source>a lift and a method</source>
        <translation>eine Übung und eine Methode</translation>
    </message>
    <message>
        <source>A clearance has to wait</source>
        <translation>Eine Freigabe muss warten</translation>
    </message>
    <message>
        <source>Nobody has cleared her for anything yet.</source>
        <translation>Noch hat niemand sie für etwas freigegeben.</translation>
    </message>
    <message>
        <source>Clearance is given by whoever is licensed or responsible here; Steelyard only remembers it. Nothing medical is kept: who, for what, and until when.</source>
        <translation>Freigaben erteilt, wer hier dazu befugt oder verantwortlich ist; Steelyard merkt sie sich nur. Nichts Medizinisches wird behalten: wer, wofür und bis wann.</translation>
    </message>
</context>
<context>
    <name>CodeGroups</name>
    <message>
        <source>to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>as on paper</source>
        <translation>wie auf dem Papier</translation>
    </message>
</context>
<context>
    <name>CodePage</name>
    <message>
        <source>Recovery code</source>
        <translation>Rettungs­code</translation>
    </message>
    <message>
        <source>shown this once, and kept nowhere</source>
        <translation>nur dieses eine Mal gezeigt, nirgends gespeichert</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>IT IS ON PAPER</source>
        <translation>STEHT AUF PAPIER</translation>
    </message>
    <message>
        <source>The recovery code, to be read by eye</source>
        <translation>Der Rettungs­code, mit dem Auge zu lesen</translation>
    </message>
    <message>
        <source>Write its five groups on paper now. The last sign of each group finds mistakes, so nothing is lost by writing badly.</source>
        <translation>Schreib seine fünf Gruppen jetzt auf Papier. Das letzte Zeichen jeder Gruppe findet Fehler, also ist nichts verloren, wenn du schlecht schreibst.</translation>
    </message>
    <message>
        <source>Keep the paper where your squad&apos;s papers are locked away, and not with this device.</source>
        <translation>Bewahre das Papier da auf, wo die Papiere deines Kaders ein­geschlossen sind, und nicht bei diesem Gerät.</translation>
    </message>
</context>
<context>
    <name>ContestedCard</name>
    <message>
        <source>stands now</source>
        <translation>gilt jetzt</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
</context>
<context>
    <name>CopyListPage</name>
    <message>
        <source>Copy a list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>COPY</source>
        <translation>KOPIEREN</translation>
    </message>
    <message>
        <source>The list of</source>
        <translation>Die Liste von</translation>
    </message>
    <message>
        <source>For a place with like kit of its own: names and counts are copied, measurements are not. Another chain weighs something else; each is measured there before it hangs. Kit that you carry there is taken along instead.</source>
        <translation>Für einen Ort mit eigenem, gleich­artigem Material: Namen und Anzahl werden kopiert, Messungen nicht. Eine andere Kette wiegt etwas anderes; jedes Stück wird dort gemessen, bevor es hängt. Material, das du dorthin bringst, wird stattdessen mitgenommen.</translation>
    </message>
</context>
<context>
    <name>CopyListView</name>
    <message>
        <source>a pair</source>
        <translation>ein Paar</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>nothing to copy</source>
        <translation>nichts zu kopieren</translation>
    </message>
    <message numerus="yes">
        <source>%n things, still to be measured</source>
        <translation>
            <numerusform>%n Stück, noch zu messen</numerusform>
            <numerusform>%n Stück, noch zu messen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CountRow</name>
    <message>
        <source>%1: one less</source>
        <translation>%1: eins weniger</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: one more</source>
        <translation>%1: eins mehr</translation>
    </message>
</context>
<context>
    <name>DayEditor</name>
    <message>
        <source>Day of the month</source>
        <translation>Tag im Monat</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Diesen Tag gibt es nicht: Schau auf Tag und Monat.</translation>
    </message>
    <message>
        <source>That day lies ahead.</source>
        <translation>Dieser Tag kommt erst noch.</translation>
    </message>
</context>
<context>
    <name>DayStatusPage</name>
    <message>
        <source>may train today</source>
        <translation>darf heute trainieren</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>SET ANEW</source>
        <translation>NEU SETZEN</translation>
    </message>
    <message>
        <source>all, some or none</source>
        <translation>alles, manches oder nichts</translation>
    </message>
    <message>
        <source>Each of them holds: what one forbids, none of the others allows.</source>
        <translation>Jede davon gilt: Was eine verbietet, erlaubt keine andere.</translation>
    </message>
    <message>
        <source>Whoever is licensed or responsible here decides. Note who and until when, and what not to do; no diagnoses.</source>
        <translation>Es entscheidet, wer hier dazu befugt oder verantwortlich ist. Notiere, wer, bis wann und was nicht; keine Diagnosen.</translation>
    </message>
    <message>
        <source>Other days</source>
        <translation>Andere Tage</translation>
    </message>
</context>
<context>
    <name>DeedLine</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
</context>
<context>
    <name>DeedsPage</name>
    <message>
        <source>Done lately</source>
        <translation>Zuletzt getan</translation>
    </message>
    <message>
        <source>a tap undoes it; the last 20</source>
        <translation>Antippen macht es rückgängig; die letzten 20</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Nothing was kept since the vault was opened, or all of it has been undone.</source>
        <translation>Seit der Tresor geöffnet wurde, wurde nichts behalten, oder alles ist rückgängig gemacht.</translation>
    </message>
</context>
<context>
    <name>DeedsView</name>
    <message>
        <source>something newer stands there: undo that first</source>
        <translation>da steht etwas Neueres: erst das rückgängig machen</translation>
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
        <translation>überall</translation>
    </message>
</context>
<context>
    <name>DoorSheet</name>
    <message>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
</context>
<context>
    <name>EccentricPage</name>
    <message>
        <source>Heavier on the way down</source>
        <translation>Schwerer auf dem Weg nach unten</translation>
    </message>
    <message>
        <source>for nobody yet</source>
        <translation>noch für niemanden</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>HANG THIS BAR</source>
        <translation>DIESE STANGE HÄNGEN</translation>
    </message>
    <message>
        <source>What makes the way down heavier?</source>
        <translation>Was macht den Weg nach unten schwerer?</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Durch</translation>
    </message>
    <message>
        <source>release hooks</source>
        <translation>Auslösehaken</translation>
    </message>
    <message>
        <source>partner lifts plates off</source>
        <translation>Partner nimmt Scheiben ab</translation>
    </message>
    <message>
        <source>partner pushes</source>
        <translation>Partner drückt</translation>
    </message>
    <message>
        <source>bands let go</source>
        <translation>Bänder losgelassen</translation>
    </message>
    <message>
        <source>dumbbells dropped</source>
        <translation>Kurzhanteln fallen gelassen</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Verlangt</translation>
    </message>
    <message>
        <source>in % of her 1RM</source>
        <translation>in % ihres 1RM</translation>
    </message>
    <message>
        <source>as loads</source>
        <translation>als Lasten</translation>
    </message>
    <message>
        <source>The way down in % of</source>
        <translation>Der Weg nach unten in % von</translation>
    </message>
    <message>
        <source>her 1RM</source>
        <translation>ihrem 1RM</translation>
    </message>
    <message>
        <source>the way up</source>
        <translation>dem Weg nach oben</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Wieder angehängt</translation>
    </message>
    <message>
        <source>not in the set</source>
        <translation>nicht im Satz</translation>
    </message>
    <message>
        <source>at each rep</source>
        <translation>bei jeder Wieder­holung</translation>
    </message>
    <message>
        <source>at each cluster</source>
        <translation>bei jeder Gruppe</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Von wem</translation>
    </message>
    <message>
        <source>spotters, one at each end</source>
        <translation>Helfer, an jedem Ende</translation>
    </message>
    <message>
        <source>herself, bar in the rack</source>
        <translation>von ihr, Stange im Rack</translation>
    </message>
    <message>
        <source>Hook, depth and safeties</source>
        <translation>Haken, Tiefe und Sicherheits­ablagen</translation>
    </message>
    <message>
        <source>Depth and safeties</source>
        <translation>Tiefe und Sicherheits­ablagen</translation>
    </message>
</context>
<context>
    <name>EndPage</name>
    <message>
        <source>Take it back?</source>
        <translation>Zurück­nehmen?</translation>
    </message>
    <message>
        <source>Lift it?</source>
        <translation>Aufheben?</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <source>TAKE BACK</source>
        <translation>ZURÜCK­NEHMEN</translation>
    </message>
    <message>
        <source>LIFT IT</source>
        <translation>AUFHEBEN</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>sobald gesagt ist, wer</translation>
    </message>
    <message>
        <source>from today on</source>
        <translation>von heute an</translation>
    </message>
    <message>
        <source>Who takes it back</source>
        <translation>Wer sie zurück­nimmt</translation>
    </message>
    <message>
        <source>Who lifts it</source>
        <translation>Wer ihn aufhebt</translation>
    </message>
    <message>
        <source>Every clearance of hers for this lift and method goes with it, those to come too. The set-up page then says do not lift where it is needed.</source>
        <translation>Jede ihrer Freigaben für diese Übung und Methode geht mit, auch künftige. Wo sie nötig ist, sagt die Aufbau­seite dann: nicht heben.</translation>
    </message>
    <message>
        <source>What others have set holds on: each is lifted by itself.</source>
        <translation>Was andere gesetzt haben, gilt weiter: Jeder wird für sich aufgehoben.</translation>
    </message>
    <message>
        <source>You can undo it until the vault is locked.</source>
        <translation>Du kannst es rückgängig machen, bis der Tresor gesperrt wird.</translation>
    </message>
</context>
<context>
    <name>ExampleStrip</name>
    <message>
        <source>EXAMPLE: nobody here is real</source>
        <translation>BEISPIEL: niemand hier ist echt</translation>
    </message>
</context>
<context>
    <name>FactRow</name>
    <message>
        <source>filled in, not yet confirmed. %1</source>
        <translation>voraus­gefüllt, noch nicht bestätigt. %1</translation>
    </message>
</context>
<context>
    <name>FieldEditor</name>
    <message>
        <source>not entered</source>
        <translation>nicht eingetragen</translation>
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
        <translation>heute</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>ein anderer Tag</translation>
    </message>
    <message>
        <source>that day</source>
        <translation>nur an dem Tag</translation>
    </message>
    <message numerus="yes">
        <source>%n weeks</source>
        <translation>
            <numerusform>%n Woche</numerusform>
            <numerusform>%n Wochen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>from %1 to the end of %2</source>
        <translation>von %1 bis Ende %2</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Diesen Tag gibt es nicht: Schau auf Tag und Monat.</translation>
    </message>
    <message>
        <source>It would end before it begins: put a later last day, or none.</source>
        <translation>Es würde enden, bevor es beginnt: Nimm einen späteren letzten Tag oder keinen.</translation>
    </message>
</context>
<context>
    <name>GatePages</name>
    <message>
        <source>Which lift?</source>
        <translation>Welche Übung?</translation>
    </message>
    <message>
        <source>Which method?</source>
        <translation>Welche Methode?</translation>
    </message>
</context>
<context>
    <name>HangAsker</name>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Looking for the best</source>
        <translation>Suche nach dem Besten</translation>
    </message>
    <message>
        <source>Nothing here may hang that way.</source>
        <translation>Nichts, was hier ist, darf so hängen.</translation>
    </message>
    <message>
        <source>Nothing comes nearer with the kit that is here.</source>
        <translation>Nichts kommt näher mit dem Material, das hier ist.</translation>
    </message>
    <message>
        <source>Not with the kit that is here. These come nearest.</source>
        <translation>Nicht mit dem Material, das hier ist. Diese kommen am nächsten.</translation>
    </message>
    <message>
        <source>Not with the kit that is here. What fails first: %1. These come nearest.</source>
        <translation>Nicht mit dem Material, das hier ist. Was zuerst scheitert: %1. Diese kommen am nächsten.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>per cent of the 1RM</source>
        <translation>Prozent des 1RM</translation>
    </message>
    <message>
        <source>1RM</source>
        <translation>1RM</translation>
    </message>
    <message>
        <source>of this lift, as it was lifted at that place; typed for now</source>
        <translation>dieser Übung, wie es dort gehoben wurde; vorläufig eingetippt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>The 1RM comes first</source>
        <translation>Zuerst das 1RM</translation>
    </message>
    <message>
        <source>Key it above. It is typed for now: nothing here has tested it.</source>
        <translation>Oben eintippen. Es ist vorläufig: Hier hat es nichts geprüft.</translation>
    </message>
    <message>
        <source>Pull at three heights at least, from near her lowest to near her highest.</source>
        <translation>An mindestens drei Höhen ziehen, von nahe ihrer tiefsten bis nahe ihrer höchsten.</translation>
    </message>
    <message>
        <source>typed for now, not tested</source>
        <translation>vorläufig, nicht geprüft</translation>
    </message>
    <message>
        <source>filled in from her tests: %1, %2</source>
        <translation>aus ihren Tests eingesetzt: %1, %2</translation>
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
        <translation>Verankert an</translation>
    </message>
    <message>
        <source>Hangs by</source>
        <translation>Hängt an</translation>
    </message>
</context>
<context>
    <name>HangEditor</name>
    <message>
        <source>Lead</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>strap from the bar&apos;s middle to the first link</source>
        <translation>Riemen von der Stangen­mitte zum ersten Glied</translation>
    </message>
    <message>
        <source>Lead and hook weigh</source>
        <translation>Riemen und Haken wiegen</translation>
    </message>
    <message>
        <source>0 when it is next to nothing</source>
        <translation>0, wenn es fast nichts ist</translation>
    </message>
    <message>
        <source>Height of the bunch</source>
        <translation>Höhe des Bündels</translation>
    </message>
    <message>
        <source>Anchor&apos;s height</source>
        <translation>Ankerhöhe</translation>
    </message>
    <message>
        <source>floor to where the band holds</source>
        <translation>Boden bis dahin, wo das Band hält</translation>
    </message>
    <message>
        <source>Anchor held down by</source>
        <translation>Anker beschwert mit</translation>
    </message>
    <message>
        <source>plates or a rack that stands loose; leave out when bolted</source>
        <translation>Scheiben oder ein Rack, das lose steht; weglassen, wenn verschraubt</translation>
    </message>
    <message>
        <source>In front of the bar by</source>
        <translation>Vor der Stange um</translation>
    </message>
    <message>
        <source>Behind the bar by</source>
        <translation>Hinter der Stange um</translation>
    </message>
    <message>
        <source>Goes round a bar of</source>
        <translation>Geht um eine Stange von</translation>
    </message>
    <message>
        <source>thickness of the handle or peg</source>
        <translation>Dicke von Griff oder Zapfen</translation>
    </message>
    <message>
        <source>Bar on the chest</source>
        <translation>Stange auf der Brust</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle where it touches; her bottom mark if left out</source>
        <translation>Boden bis Stangen­mitte, wo sie die Brust berührt; weg­gelassen gilt ihre Marke unten</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>HangPage</name>
    <message>
        <source>how it hangs</source>
        <translation>wie es hängt</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>DONE</source>
        <translation>FERTIG</translation>
    </message>
    <message>
        <source>see what she lifts</source>
        <translation>sehen, was sie hebt</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>left only</source>
        <translation>nur links</translation>
    </message>
    <message>
        <source>right only</source>
        <translation>nur rechts</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Hängt</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>doubled</source>
        <translation>doppelt</translation>
    </message>
    <message>
        <source>bunched</source>
        <translation>gebündelt</translation>
    </message>
    <message>
        <source>single</source>
        <translation>einfach</translation>
    </message>
    <message>
        <source>Anchored</source>
        <translation>Verankert</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>Anchor, to the bar</source>
        <translation>Anker, zur Stange</translation>
    </message>
    <message>
        <source>in line</source>
        <translation>in Linie</translation>
    </message>
    <message>
        <source>in front</source>
        <translation>davor</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>dahinter</translation>
    </message>
    <message>
        <source>For a press from the chest: worn in the middle of the bar, it helps most where the bar touches her. In any other lift it is for you to say whether that holds.</source>
        <translation>Für Drücken von der Brust: In der Mitte der Stange getragen, hilft sie am meisten, wo die Stange die Athletin berührt. Ob das bei einer anderen Übung gilt, ent­scheidest du.</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Neu messen</translation>
    </message>
</context>
<context>
    <name>HangingLine</name>
    <message>
        <source>Hanging %1, mass: %2</source>
        <translation>Hängung %1, Masse: %2</translation>
    </message>
    <message>
        <source>Hanging %1, length: %2</source>
        <translation>Hängung %1, Länge: %2</translation>
    </message>
    <message>
        <source>Take hanging %1 in again</source>
        <translation>Hängung %1 wieder aufnehmen</translation>
    </message>
    <message>
        <source>Leave hanging %1 out</source>
        <translation>Hängung %1 weglassen</translation>
    </message>
    <message>
        <source>Take in again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
</context>
<context>
    <name>HeightPicture</name>
    <message>
        <source>iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>read lower</source>
        <translation>tiefer ablesen</translation>
    </message>
    <message>
        <source>read higher</source>
        <translation>höher ablesen</translation>
    </message>
    <message>
        <source>Tap to read the pull at a height</source>
        <translation>Antippen, um den Zug in einer Höhe abzulesen</translation>
    </message>
</context>
<context>
    <name>HeightsPage</name>
    <message>
        <source>At each height</source>
        <translation>In jeder Höhe</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
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
        <translation>Höhen vom Boden bis zur Mitte der Stange. ± gilt für 19 von 20 Malen; jeder Teil hat sein eigenes, und sie addieren sich nicht einfach: JCGM 100:2008.</translation>
    </message>
</context>
<context>
    <name>HeightsView</name>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>sticking zone begins</source>
        <translation>Sticking-Zone beginnt</translation>
    </message>
    <message>
        <source>sticking zone ends</source>
        <translation>Sticking-Zone endet</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>chain %1</source>
        <translation>Kette %1</translation>
    </message>
    <message>
        <source>band %1</source>
        <translation>Band %1</translation>
    </message>
    <message>
        <source>aid %1</source>
        <translation>Bankhilfe %1</translation>
    </message>
    <message>
        <source>iron %1</source>
        <translation>Eisen %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>HerePage</name>
    <message>
        <source>What she may use</source>
        <translation>Was sie benutzen darf</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Enter what is here</source>
        <translation>Eintragen, was hier ist</translation>
    </message>
    <message>
        <source>Local rules, and whoever is licensed or responsible here, go before this list.</source>
        <translation>Örtliche Regeln und wer hier dazu befugt oder verantwortlich ist, gehen dieser Liste vor.</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
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
        <translation>Wähle unter Material, wo du bist: Eine Liste gilt für einen Ort.</translation>
    </message>
    <message>
        <source>Choose in Squad whom it is for.</source>
        <translation>Wähle unter Kader, für wen es ist.</translation>
    </message>
    <message>
        <source>Nothing of the kind is on the list of this venue. Enter it in Kit: a tyre takes a minute.</source>
        <translation>Auf der Liste dieses Orts steht nichts dergleichen. Trag es unter Material ein: Ein Reifen dauert eine Minute.</translation>
    </message>
    <message>
        <source>%1 she may use, %2 to look over first, %3 not now</source>
        <translation>%1 darf sie benutzen, %2 erst durchsehen, %3 jetzt nicht</translation>
    </message>
    <message>
        <source>%1, set to %2 at most</source>
        <translation>%1, höchstens auf %2 gestellt</translation>
    </message>
</context>
<context>
    <name>HookMeasuresPage</name>
    <message>
        <source>Hook, depth and safeties</source>
        <translation>Haken, Tiefe und Sicherheits­ablagen</translation>
    </message>
    <message>
        <source>Depth and safeties</source>
        <translation>Tiefe und Sicherheits­ablagen</translation>
    </message>
    <message>
        <source>for nobody yet</source>
        <translation>noch für niemanden</translation>
    </message>
    <message>
        <source>Way down</source>
        <translation>Weg nach unten</translation>
    </message>
    <message>
        <source>BACK TO THE LOAD</source>
        <translation>ZURÜCK ZUR LAST</translation>
    </message>
    <message>
        <source>The hook</source>
        <translation>Der Haken</translation>
    </message>
    <message>
        <source>How deep she goes</source>
        <translation>Wie tief sie geht</translation>
    </message>
    <message>
        <source>Sides and safeties</source>
        <translation>Seiten und Sicherheits­ablagen</translation>
    </message>
    <message>
        <source>Rehearse with empty hooks and set the safeties before anything is hung on them. A bar that comes down one degree out of level lets one side go late: it has to come down level.</source>
        <translation>Mit leeren Haken üben und die Sicherheitsablagen einstellen, bevor etwas daran hängt. Eine Stange, die um ein Grad schief kommt, lässt eine Seite zu spät los: Sie muss waagrecht herunterkommen.</translation>
    </message>
</context>
<context>
    <name>HungDrawing</name>
    <message>
        <source>%1; the bar half way, at %2</source>
        <translation>%1; die Stange auf halbem Weg, bei %2</translation>
    </message>
</context>
<context>
    <name>ImplementEditor</name>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>It holds gas: nobody opens, drops or lifts it until whoever owns it has let it off.</source>
        <translation>Es hält Gas: Niemand öffnet es, lässt es fallen oder hebt es, bis es abgelassen hat, wem es gehört.</translation>
    </message>
    <message>
        <source>Nobody knows whether it holds gas: it is used for nothing until somebody does.</source>
        <translation>Niemand weiß, ob es Gas hält: Bis es jemand weiß, wird es für nichts benutzt.</translation>
    </message>
    <message>
        <source>Still to do: %1</source>
        <translation>Noch zu tun: %1</translation>
    </message>
</context>
<context>
    <name>ImplementPages</name>
    <message>
        <source>Which lift?</source>
        <translation>Welche Übung?</translation>
    </message>
    <message>
        <source>Held against</source>
        <translation>Gemessen an</translation>
    </message>
</context>
<context>
    <name>InspectPage</name>
    <message>
        <source>Look over: %1</source>
        <translation>Durchsehen: %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>BACK IN USE</source>
        <translation>WIEDER FREI</translation>
    </message>
    <message>
        <source>FIT FOR USE</source>
        <translation>IN ORDNUNG</translation>
    </message>
    <message>
        <source>OUT OF USE</source>
        <translation>GESPERRT</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>looked over today</source>
        <translation>heute durch­gesehen</translation>
    </message>
    <message>
        <source>once it is said what was found</source>
        <translation>sobald gesagt ist, was gefunden wurde</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Out of use: it is offered nowhere, and no set-up with it is ready. What is worn or broken is not mended by looking: bring it back only once it was put right and found fit by whoever answers for the kit.</source>
        <translation>Gesperrt: Es wird nirgends angeboten, und kein Aufbau damit ist bereit. Was ver­schlissen oder gebrochen ist, wird vom Ansehen nicht heil: Gib es erst wieder frei, wenn es instand gesetzt wurde und die für das Material verant­wortliche Person es in Ordnung fand.</translation>
    </message>
    <message>
        <source>What was done, if you say so</source>
        <translation>Was getan wurde, wenn du es sagst</translation>
    </message>
    <message>
        <source>Where, or what else</source>
        <translation>Wo, oder was sonst</translation>
    </message>
    <message>
        <source>Doubtful is out of use. What the maker says and the rules of the house go first.</source>
        <translation>Zweifelhaft heißt gesperrt. Angaben des Herstellers und Hausregeln gehen vor.</translation>
    </message>
</context>
<context>
    <name>InspectionEditor</name>
    <message>
        <source>looked over %1: nothing wrong</source>
        <translation>durch­gesehen %1: kein Mangel</translation>
    </message>
    <message>
        <source>nothing wrong</source>
        <translation>kein Mangel</translation>
    </message>
</context>
<context>
    <name>IronEditor</name>
    <message>
        <source>Marked</source>
        <translation>Aufschrift</translation>
    </message>
    <message>
        <source>on each of them</source>
        <translation>auf jeder einzelnen</translation>
    </message>
    <message>
        <source>on the bar, or what it counts as</source>
        <translation>auf der Stange, oder als was sie zählt</translation>
    </message>
    <message>
        <source>On the scale together</source>
        <translation>Zusammen an der Waage</translation>
    </message>
    <message>
        <source>how many of them</source>
        <translation>wie viele davon</translation>
    </message>
    <message>
        <source>plates</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>Die Waage zeigt</translation>
    </message>
    <message>
        <source>for all of them</source>
        <translation>für alle zusammen</translation>
    </message>
    <message>
        <source>for the whole bar</source>
        <translation>für die ganze Stange</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Weigh a bar or plates</source>
        <translation>Stange oder Scheiben wiegen</translation>
    </message>
    <message>
        <source>What is marked is what it was meant to weigh. Hang it level and clear of the floor, from a hook that holds more than it weighs, and never more than the scale is made for; feet clear.</source>
        <translation>Die Aufschrift sagt, was es wiegen sollte. Häng es waagerecht und frei vom Boden an einen Haken, der mehr hält, als es wiegt, und nie mehr, als wofür die Waage gemacht ist; Füße weg.</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es ist</translation>
    </message>
    <message>
        <source>a bar</source>
        <translation>eine Stange</translation>
    </message>
    <message>
        <source>plates of one kind</source>
        <translation>Scheiben einer Sorte</translation>
    </message>
    <message>
        <source>whole, on one scale</source>
        <translation>ganz, an einer Waage</translation>
    </message>
    <message>
        <source>several at once are surer</source>
        <translation>mehrere auf einmal sind sicherer</translation>
    </message>
    <message>
        <source>What is marked on it?</source>
        <translation>Was steht darauf?</translation>
    </message>
    <message>
        <source>How many at once?</source>
        <translation>Wie viele auf einmal?</translation>
    </message>
    <message>
        <source>What does the scale read?</source>
        <translation>Was zeigt die Waage?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>Wie fein zeigt die Waage?</translation>
    </message>
    <message>
        <source>The figure on each plate.</source>
        <translation>Die Zahl auf jeder Scheibe.</translation>
    </message>
    <message>
        <source>The figure on its end; without one, what it counts as.</source>
        <translation>Die Zahl an ihrem Ende; ohne sie das, als was die Stange zählt.</translation>
    </message>
    <message>
        <source>Plates with the same mark, on the scale together. What is taken into a bar&apos;s stock is as many as were weighed.</source>
        <translation>Scheiben mit gleicher Aufschrift, zusammen an der Waage. In den Bestand einer Stange kommen so viele, wie gewogen wurden.</translation>
    </message>
    <message>
        <source>With nothing but them on it, less the strap; once it hangs still.</source>
        <translation>Mit nichts anderem daran, Riemen abgezogen; sobald es ruhig hängt.</translation>
    </message>
    <message>
        <source>What it weighs: not known yet</source>
        <translation>Was es wiegt: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Nobody has checked this scale here: against a known mass it would be surer how far it is out.</source>
        <translation>Diese Waage hat hier niemand geprüft: Mit einer bekannten Masse wäre sicherer, wie weit sie daneben­liegt.</translation>
    </message>
    <message>
        <source>Several at once on the scale would be surer.</source>
        <translation>Mehrere auf einmal an der Waage wären sicherer.</translation>
    </message>
    <message>
        <source>Plates, weighed</source>
        <translation>Scheiben, gewogen</translation>
    </message>
    <message>
        <source>Bar, weighed</source>
        <translation>Stange, gewogen</translation>
    </message>
    <message numerus="yes">
        <source>%n plates of %1</source>
        <translation>
            <numerusform>%n Scheibe zu %1</numerusform>
            <numerusform>%n Scheiben zu je %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Bar of %1</source>
        <translation>Stange zu %1</translation>
    </message>
    <message>
        <source>One end</source>
        <translation>Ein Ende</translation>
    </message>
    <message>
        <source>just off the ground</source>
        <translation>gerade vom Boden gelöst</translation>
    </message>
    <message>
        <source>The other end</source>
        <translation>Das andere Ende</translation>
    </message>
    <message>
        <source>where it has a mark at all</source>
        <translation>falls überhaupt etwas darauf steht</translation>
    </message>
    <message>
        <source>a bar, by its ends</source>
        <translation>eine Stange, an ihren Enden</translation>
    </message>
    <message>
        <source>one end, then the other, where no scale holds it</source>
        <translation>erst ein Ende, dann das andere, wenn keine Waage sie trägt</translation>
    </message>
    <message>
        <source>What does one end weigh?</source>
        <translation>Was wiegt ein Ende?</translation>
    </message>
    <message>
        <source>And the other end?</source>
        <translation>Und das andere Ende?</translation>
    </message>
    <message>
        <source>Lift it a hand&apos;s breadth at the very end, the rope upright, the other end on the ground. The two add up, however its mass lies.</source>
        <translation>Heb sie ganz am Ende eine Handbreit an, das Seil senkrecht, das andere Ende am Boden. Beides zusammen ist ihre Masse, wie auch immer sie verteilt ist.</translation>
    </message>
</context>
<context>
    <name>ItemEditor</name>
    <message>
        <source>No kept set-up pulls otherwise by it.</source>
        <translation>Kein behaltener Aufbau zieht dadurch anders.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>somebody taken out</source>
        <translation>heraus­genommene Person</translation>
    </message>
    <message>
        <source>Kept set-ups that pull otherwise by it: %1.</source>
        <translation>Behaltene Aufbauten, die dadurch anders ziehen: %1.</translation>
    </message>
    <message>
        <source>no venue</source>
        <translation>kein Ort</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>weder noch</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>due since %1</source>
        <translation>fällig seit %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>%1, the last %2</source>
        <translation>%1, zuletzt %2</translation>
    </message>
</context>
<context>
    <name>ItemEnd</name>
    <message>
        <source>Compare it with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>zwei gleiche</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Name, wenn du einen gibst</translation>
    </message>
    <message>
        <source>All numbers on one page</source>
        <translation>Alle Zahlen auf einer Seite</translation>
    </message>
    <message>
        <source>Look it over: fit, or out of use</source>
        <translation>Durchsehen: in Ordnung oder gesperrt</translation>
    </message>
    <message>
        <source>Borrowed, or lent out</source>
        <translation>Geliehen oder verliehen</translation>
    </message>
</context>
<context>
    <name>ItemFoot</name>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>nach einer Änderung</translation>
    </message>
    <message>
        <source>once measured</source>
        <translation>nach dem Messen</translation>
    </message>
</context>
<context>
    <name>ItemOriginPage</name>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>There is no number yet: measure it first.</source>
        <translation>Noch gibt es keine Zahl: erst messen.</translation>
    </message>
    <message>
        <source>± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.</source>
        <translation>± gilt in 19 von 20 Fällen; Teile, die nichts miteinander zu tun haben, addieren sich im Quadrat: JCGM 100:2008.</translation>
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
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>copied from a list: measure it here</source>
        <translation>aus einer Liste kopiert: hier messen</translation>
    </message>
    <message>
        <source>%1 · look back, or put one right</source>
        <translation>%1 · nachsehen oder eine berichtigen</translation>
    </message>
    <message>
        <source>Measure it</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Measure it again</source>
        <translation>Neu messen</translation>
    </message>
    <message>
        <source>Its number</source>
        <translation>Die Zahl dazu</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>woher es kommt</translation>
    </message>
    <message>
        <source>Borrowed, or lent out</source>
        <translation>Geliehen oder verliehen</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>What it said at first stays in the vault&apos;s journal and can be read here.</source>
        <translation>Was zuerst da stand, bleibt im Journal des Tresors und ist hier nachzulesen.</translation>
    </message>
</context>
<context>
    <name>ItemRow</name>
    <message>
        <source>right %1</source>
        <translation>rechts %1</translation>
    </message>
    <message>
        <source>left %1, right %2</source>
        <translation>links %1, rechts %2</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>links %1</translation>
    </message>
</context>
<context>
    <name>ItemThrow</name>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Out of the kit</source>
        <translation>Aus dem Material</translation>
    </message>
</context>
<context>
    <name>KeyedNumber</name>
    <message>
        <source>%1: nothing keyed yet</source>
        <translation>%1: noch nichts eingetippt</translation>
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
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Hang %1</source>
        <translation>%1 auflegen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>IT IS RIGHT</source>
        <translation>ES STIMMT</translation>
    </message>
</context>
<context>
    <name>KitComparison</name>
    <message>
        <source>They have no length in common to compare them at.</source>
        <translation>Sie haben keine gemeinsame Länge, bei der man sie vergleichen kann.</translation>
    </message>
</context>
<context>
    <name>KitView</name>
    <message>
        <source>not measured yet</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>pulls %1 at %2</source>
        <translation>zieht %1 bei %2</translation>
    </message>
    <message>
        <source>helps %1</source>
        <translation>hilft %1</translation>
    </message>
    <message>
        <source>changes not kept</source>
        <translation>Änderungen nicht behalten</translation>
    </message>
    <message>
        <source>lent</source>
        <translation>verliehen</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>a pair</source>
        <translation>ein Paar</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>gehört zu %1</translation>
    </message>
    <message>
        <source>taken along to %1</source>
        <translation>mitgenommen nach %1</translation>
    </message>
</context>
<context>
    <name>LaneEditor</name>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>for carries and sleds, from mark to mark</source>
        <translation>für Tragen und Schlitten, von Marke zu Marke</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>LeadEditor</name>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>the bar&apos;s middle to the first link</source>
        <translation>Stangen­mitte bis zum ersten Glied</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>with its hooks; 0 when it is next to nothing</source>
        <translation>samt Haken; 0, wenn es fast nichts ist</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Measure a lead strap</source>
        <translation>Riemen messen</translation>
    </message>
    <message>
        <source>What a chain hangs by decides where its first link leaves the floor. Look it over: a cut, a frayed stitch or a hook that does not close, and it is not measured but thrown away.</source>
        <translation>Woran eine Kette hängt, entscheidet, wo ihr erstes Glied vom Boden kommt. Sieh den Riemen durch: Bei einem Schnitt, einer aus­gefransten Naht oder einem Haken, der nicht schließt, wird er nicht gemessen, sondern weggeworfen.</translation>
    </message>
    <message>
        <source>How long is it?</source>
        <translation>Wie lang ist das Stück?</translation>
    </message>
    <message>
        <source>What does it weigh?</source>
        <translation>Was wiegt das Stück?</translation>
    </message>
    <message>
        <source>Pulled straight as it will hang: from the bar&apos;s middle to where the first link sits.</source>
        <translation>Gerade gezogen, wie er hängen wird: von der Stangen­mitte bis dahin, wo das erste Glied sitzt.</translation>
    </message>
    <message>
        <source>With its hooks. 0 when it is next to nothing.</source>
        <translation>Samt Haken. 0, wenn es fast nichts ist.</translation>
    </message>
    <message>
        <source>Length and mass: not known yet</source>
        <translation>Länge und Masse: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Lead, %1</source>
        <translation>Riemen, %1</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Riemen</translation>
    </message>
</context>
<context>
    <name>LevelPicture</name>
    <message>
        <source>the pull</source>
        <translation>der Zug</translation>
    </message>
    <message>
        <source>what she can hold</source>
        <translation>was sie halten kann</translation>
    </message>
    <message>
        <source>its share of that</source>
        <translation>sein Anteil daran</translation>
    </message>
    <message>
        <source>with plain iron</source>
        <translation>mit bloßem Eisen</translation>
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
        <translation>keine davon</translation>
    </message>
</context>
<context>
    <name>LiftLine</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>LiftPage</name>
    <message>
        <source>A lift of your own</source>
        <translation>Eigene Übung</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Name of the lift</source>
        <translation>Name der Übung</translation>
    </message>
    <message>
        <source>as you call it; a bar moves along a path</source>
        <translation>wie du sie nennst; eine Stange bewegt sich auf einer Bahn</translation>
    </message>
    <message>
        <source>The lift starts</source>
        <translation>Die Übung beginnt</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>an ihrem tiefsten Punkt</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>mit den Scheiben am Boden</translation>
    </message>
    <message>
        <source>Most like</source>
        <translation>Am ähnlichsten</translation>
    </message>
    <message>
        <source>Taken out, it leaves the list; bar marks and set-ups for it stay.</source>
        <translation>Heraus­genommen ver­schwindet sie aus der Liste; Stangen­marken und Aufbauten dafür bleiben.</translation>
    </message>
</context>
<context>
    <name>LiftStrengthPage</name>
    <message>
        <source>%1 · what counts today</source>
        <translation>%1 · was heute gilt</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>ADD A TEST</source>
        <translation>TEST HINZUFÜGEN</translation>
    </message>
    <message>
        <source>A bar is the range of a day, its tick the middle, a disc a maximum that was tried out. A dashed line: other conditions.</source>
        <translation>Ein Balken ist die Spanne eines Tages, sein Strich die Mitte, eine Scheibe ein ausprobiertes Maximum. Gestrichelt: andere Bedingungen.</translation>
    </message>
    <message>
        <source>No test of this lift is kept yet.</source>
        <translation>Von dieser Übung ist noch kein Test behalten.</translation>
    </message>
</context>
<context>
    <name>LiftStrengthView</name>
    <message>
        <source>changes not kept</source>
        <translation>Änderungen nicht behalten</translation>
    </message>
    <message>
        <source>by itself: %1</source>
        <translation>für sich allein: %1</translation>
    </message>
    <message>
        <source>nothing follows: %1</source>
        <translation>nichts folgt daraus: %1</translation>
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
        <translation>kein Maximum</translation>
    </message>
    <message>
        <source>Other conditions below: not to be compared with those above.</source>
        <translation>Darunter andere Bedingungen: nicht mit denen darüber zu vergleichen.</translation>
    </message>
    <message>
        <source>%1; older than your limit: test again</source>
        <translation>%1; älter als deine Grenze: neu testen</translation>
    </message>
</context>
<context>
    <name>LiftsPage</name>
    <message>
        <source>bar marks of each lift</source>
        <translation>Stangen­marken jeder Übung</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>Add a lift</source>
        <translation>Übung hinzufügen</translation>
    </message>
</context>
<context>
    <name>LiftsView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>oben %1</translation>
    </message>
    <message>
        <source>begun</source>
        <translation>begonnen</translation>
    </message>
    <message>
        <source>measure again: the height has changed</source>
        <translation>neu messen: die Größe hat sich geändert</translation>
    </message>
    <message>
        <source>measure again: may have grown</source>
        <translation>neu messen: ist vielleicht gewachsen</translation>
    </message>
    <message>
        <source>%1 · looked over on %2</source>
        <translation>%1 · durch­gesehen am %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>deine</translation>
    </message>
    <message>
        <source>yours, like the %1</source>
        <translation>deine, wie %1</translation>
    </message>
    <message>
        <source>%1 and %2 hung</source>
        <translation>%1 und %2 angehängt</translation>
    </message>
</context>
<context>
    <name>LimitLine</name>
    <message>
        <source>As it was shipped</source>
        <translation>Wie aus­geliefert</translation>
    </message>
    <message>
        <source>%1: as it was shipped</source>
        <translation>%1: wie aus­geliefert</translation>
    </message>
</context>
<context>
    <name>LimitsEditor</name>
    <message>
        <source>yours; as it was shipped: %1</source>
        <translation>deine; aus­geliefert mit: %1</translation>
    </message>
    <message>
        <source>ours, as it was shipped</source>
        <translation>unsere, wie aus­geliefert</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>LimitsPage</name>
    <message>
        <source>Your limits</source>
        <translation>Deine Grenzen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>for the whole vault</source>
        <translation>für den ganzen Tresor</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Ein­stellungen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>nach einer Änderung</translation>
    </message>
    <message>
        <source>Limits as they are shipped are ours, chosen on the careful side. Local rules, a maker&apos;s word and a federation&apos;s go before ours and yours.</source>
        <translation>Aus­gelieferte Grenzen sind unsere, vorsichtig gewählt. Örtliche Regeln, das Wort eines Herstellers und das eines Verbands gehen unseren und deinen vor.</translation>
    </message>
</context>
<context>
    <name>LoadStepper</name>
    <message>
        <source>Load on the bar</source>
        <translation>Last auf der Stange</translation>
    </message>
</context>
<context>
    <name>LoanEditor</name>
    <message>
        <source>no day agreed</source>
        <translation>kein Tag vereinbart</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>in a week</source>
        <translation>in einer Woche</translation>
    </message>
    <message>
        <source>in 4 weeks</source>
        <translation>in 4 Wochen</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>ein anderer Tag</translation>
    </message>
    <message>
        <source>Back by %1.</source>
        <translation>Zurück bis %1.</translation>
    </message>
    <message>
        <source>There is no such day: look at day and month.</source>
        <translation>Diesen Tag gibt es nicht: Schau auf Tag und Monat.</translation>
    </message>
</context>
<context>
    <name>LoanPage</name>
    <message>
        <source>now: ours, and here</source>
        <translation>jetzt: unseres, und hier</translation>
    </message>
    <message>
        <source>now: %1</source>
        <translation>jetzt: %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es ist</translation>
    </message>
    <message>
        <source>ours, and here</source>
        <translation>unseres, und hier</translation>
    </message>
    <message>
        <source>borrowed</source>
        <translation>geliehen</translation>
    </message>
    <message>
        <source>lent out</source>
        <translation>verliehen</translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation>Wer es hat</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>Wem es gehört</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>Zurück bis</translation>
    </message>
    <message>
        <source>While it is lent, it is not free to hang, and no set-up with it is ready. Its measurements stay.</source>
        <translation>Solange es verliehen ist, ist es nicht frei zum Hängen, und kein Aufbau damit ist bereit. Seine Messungen bleiben.</translation>
    </message>
    <message>
        <source>Kit lists say whose it is, and put it first in the week before it goes back. Measure it before you hang it: nobody else&apos;s number is its own.</source>
        <translation>Material­listen sagen, wem es gehört, und setzen es in der Woche vor der Rückgabe nach vorn. Miss es, bevor du es hängst: Die Zahl eines anderen Stücks ist nicht seine.</translation>
    </message>
    <message>
        <source>It stands in its venue&apos;s list like the rest.</source>
        <translation>Es steht in der Liste seines Orts wie alles andere.</translation>
    </message>
    <message>
        <source>it is back</source>
        <translation>es ist zurück</translation>
    </message>
    <message>
        <source>once changed</source>
        <translation>nach einer Änderung</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>sobald gesagt ist, wer</translation>
    </message>
</context>
<context>
    <name>MachineEditor</name>
    <message>
        <source>Stack</source>
        <translation>Gewichts­block</translation>
    </message>
    <message>
        <source>what is pinned while you pull</source>
        <translation>was gesteckt ist, während du ziehst</translation>
    </message>
    <message>
        <source>what is pinned: turning moments are shown for it</source>
        <translation>was gesteckt ist: dafür werden Drehmomente gezeigt</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>how far the handle came</source>
        <translation>wie weit der Griff kam</translation>
    </message>
    <message>
        <source>what the scale shows, held still</source>
        <translation>was die Waage zeigt, ruhig gehalten</translation>
    </message>
    <message>
        <source>turned from where it begins</source>
        <translation>gedreht, vom Anfang an</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>square from the axis to the cable</source>
        <translation>im rechten Winkel von der Achse zum Seil</translation>
    </message>
    <message>
        <source>Pull along its way: not known yet</source>
        <translation>Zug nach Weg: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Turning moment by angle: not known yet</source>
        <translation>Drehmoment nach Winkel: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Mean %1 over the way, work %2. Friction is left out: up it feels like more, down like less.</source>
        <translation>Mittel %1 über den Weg, Arbeit %2. Reibung ist weg­gelassen: Hoch fühlt es sich nach mehr an, runter nach weniger.</translation>
    </message>
    <message>
        <source>Mean %1 over the way, work %2, the stack rises %3. Friction is left out: up it feels like more, down like less.</source>
        <translation>Mittel %1 über den Weg, Arbeit %2, der Gewichts­block steigt %3. Reibung ist weg­gelassen: Hoch fühlt es sich nach mehr an, runter nach weniger.</translation>
    </message>
    <message>
        <source>N·m</source>
        <translation>N·m</translation>
    </message>
    <message>
        <source>measured up to %1</source>
        <translation>gemessen bis %1</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>Cam machine</source>
        <translation>Kurven­maschine</translation>
    </message>
</context>
<context>
    <name>MachineGuide</name>
    <message>
        <source>Measure a cam machine</source>
        <translation>Kurven­maschine messen</translation>
    </message>
    <message>
        <source>What is pinned on the stack?</source>
        <translation>Was ist im Gewichts­block gesteckt?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>Wie fein zeigt die Waage?</translation>
    </message>
    <message>
        <source>How far is it turned?</source>
        <translation>Wie weit ist sie gedreht?</translation>
    </message>
    <message>
        <source>How far from axis to cable?</source>
        <translation>Wie weit von der Achse zum Seil?</translation>
    </message>
    <message>
        <source>How far did the handle come?</source>
        <translation>Wie weit kam der Griff?</translation>
    </message>
    <message>
        <source>What does it pull there?</source>
        <translation>Was zieht sie dort?</translation>
    </message>
    <message>
        <source>for all readings</source>
        <translation>für alle Ablesungen</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>As it stays for every reading. A printed mass is taken as right within 2 %.</source>
        <translation>So, wie es für jede Ablesung bleibt. Eine auf­gedruckte Masse gilt auf 2 % als richtig.</translation>
    </message>
    <message>
        <source>Turning moments are shown for it, and it can be changed later. A printed mass is taken as right within 2 %.</source>
        <translation>Dafür werden Drehmomente gezeigt, und es lässt sich später ändern. Eine auf­gedruckte Masse gilt auf 2 % als richtig.</translation>
    </message>
    <message>
        <source>From the start of the movement, in degrees; a level on the lever shows it.</source>
        <translation>Vom Anfang der Bewegung an, in Grad; eine Wasserwaage am Hebel zeigt es.</translation>
    </message>
    <message>
        <source>Square from the middle of the axis to the cable, where it leaves the cam. Nobody moves the lever meanwhile.</source>
        <translation>Im rechten Winkel von der Mitte der Achse zum Seil, wo es die Kurven­scheibe verlässt. Niemand bewegt dabei den Hebel.</translation>
    </message>
    <message>
        <source>Along the way of the handle, from the start of the movement.</source>
        <translation>Auf dem Weg des Griffs, vom Anfang der Bewegung an.</translation>
    </message>
    <message>
        <source>The scale between hand and handle, held still, straight along the way.</source>
        <translation>Die Waage zwischen Hand und Griff, ruhig gehalten, gerade in Richtung des Wegs.</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>Begin at the start</source>
        <translation>Beginne am Anfang</translation>
    </message>
    <message>
        <source>The first and the last reading say between what ends it is known.</source>
        <translation>Die erste und die letzte Ablesung sagen, von wo bis wo es bekannt ist.</translation>
    </message>
    <message>
        <source>Go to the end</source>
        <translation>Geh bis ans Ende</translation>
    </message>
    <message>
        <source>Past the last reading nothing is known.</source>
        <translation>Hinter der letzten Ablesung ist nichts bekannt.</translation>
    </message>
    <message>
        <source>Go for about %1</source>
        <translation>Nimm etwa %1</translation>
    </message>
    <message>
        <source>There the readings are furthest apart.</source>
        <translation>Dort liegen die Ablesungen am weitesten auseinander.</translation>
    </message>
    <message>
        <source>Enough readings.</source>
        <translation>Genug Ablesungen.</translation>
    </message>
    <message>
        <source>One more at about %1 would make it surer.</source>
        <translation>Noch eine bei etwa %1 würde es sicherer machen.</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Measure a cam machine</source>
        <translation>Kurven­maschine messen</translation>
    </message>
    <message>
        <source>pull it on a scale along its way</source>
        <translation>mit einer Waage entlang des Wegs ziehen</translation>
    </message>
    <message>
        <source>turn it, read axis to cable</source>
        <translation>drehen, Achse bis Seil ablesen</translation>
    </message>
    <message>
        <source>Reading %1, travel: %2</source>
        <translation>Ablesung %1, Weg: %2</translation>
    </message>
    <message>
        <source>Reading %1, angle: %2</source>
        <translation>Ablesung %1, Winkel: %2</translation>
    </message>
    <message>
        <source>Reading %1, pull: %2</source>
        <translation>Ablesung %1, Zug: %2</translation>
    </message>
    <message>
        <source>Reading %1, radius: %2</source>
        <translation>Ablesung %1, Radius: %2</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>by radius</source>
        <translation>nach Radius</translation>
    </message>
    <message>
        <source>by pull</source>
        <translation>nach Zug</translation>
    </message>
</context>
<context>
    <name>MachineStepsPage</name>
    <message>
        <source>A cam changes what the stack feels like along the way. Fingers out of cam, cable and stack; the pin is in to the stop before anybody lets go.</source>
        <translation>Eine Kurven­scheibe ändert auf dem Weg, wie schwer sich der Gewichts­block anfühlt. Finger raus aus Kurven­scheibe, Seil und Gewichts­block; der Stift steckt bis zum Anschlag, bevor jemand loslässt.</translation>
    </message>
    <message>
        <source>By its radius</source>
        <translation>Nach Radius</translation>
    </message>
    <message>
        <source>ruler and level: turning moment by angle</source>
        <translation>Lineal und Wasserwaage: Drehmoment nach Winkel</translation>
    </message>
    <message>
        <source>By its pull</source>
        <translation>Nach Zug</translation>
    </message>
    <message>
        <source>hanging scale and tape: pull by travel</source>
        <translation>Hängewaage und Maßband: Zug nach Weg</translation>
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
        <translation>gewählt</translation>
    </message>
</context>
<context>
    <name>MarksEditor</name>
    <message>
        <source>Blocks under the plates</source>
        <translation>Blöcke unter den Scheiben</translation>
    </message>
    <message>
        <source>none, or their height</source>
        <translation>keine, oder ihre Höhe</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle, at the sleeve</source>
        <translation>Boden bis Stangen­mitte, an der Hülse</translation>
    </message>
    <message>
        <source>Sticking zone from</source>
        <translation>Sticking-Zone von</translation>
    </message>
    <message>
        <source>her own, or leave it out</source>
        <translation>ihre eigene, oder weglassen</translation>
    </message>
    <message>
        <source>Sticking zone to</source>
        <translation>Sticking-Zone bis</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>standing tall, or arms straight</source>
        <translation>aufrecht stehend, oder Arme gestreckt</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Rack</translation>
    </message>
    <message>
        <source>where she takes the bar; may be left out</source>
        <translation>wo sie die Stange nimmt; kannst du weglassen</translation>
    </message>
    <message>
        <source>by tape, no hole</source>
        <translation>mit Maßband, kein Loch</translation>
    </message>
    <message>
        <source>%1, hole</source>
        <translation>%1, Loch</translation>
    </message>
    <message>
        <source>There is no such mark.</source>
        <translation>So eine Marke gibt es nicht.</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n holes, and the lowest is 1.</source>
        <translation>
            <numerusform>%1 hat %n Loch, und das unterste ist 1.</numerusform>
            <numerusform>%1 hat %n Löcher, und das unterste ist 1.</numerusform>
        </translation>
    </message>
    <message>
        <source>hole of %1</source>
        <translation>Loch von %1</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Maßband</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>zone from</source>
        <translation>Zone von</translation>
    </message>
    <message>
        <source>zone to</source>
        <translation>Zone bis</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>Rack</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
</context>
<context>
    <name>MarksPage</name>
    <message>
        <source>Her bar marks</source>
        <translation>Ihre Stangen­marken</translation>
    </message>
    <message>
        <source>floor to the bar&apos;s middle, read at the sleeve</source>
        <translation>Boden bis Stangen­mitte, an der Hülse abgelesen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>SEE</source>
        <translation>SEHEN</translation>
    </message>
    <message>
        <source>what she lifts</source>
        <translation>was sie hebt</translation>
    </message>
    <message>
        <source>Read them one by one</source>
        <translation>Einzeln nach­einander ablesen</translation>
    </message>
    <message>
        <source>bottom and top</source>
        <translation>unten und oben</translation>
    </message>
    <message>
        <source>The lift starts</source>
        <translation>Die Übung beginnt</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>an ihrem tiefsten Punkt</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>mit den Scheiben am Boden</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Ablesen mit</translation>
    </message>
</context>
<context>
    <name>MarksRun</name>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>%1 · %2 of %3</source>
        <translation>%1 · %2 von %3</translation>
    </message>
    <message>
        <source>Copied from %1 to %2: measure it there when there is time.</source>
        <translation>Von %1 zu %2 kopiert: Miss dort, wenn Zeit ist.</translation>
    </message>
</context>
<context>
    <name>MarksRunPage</name>
    <message>
        <source>Lifts</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <source>No zone</source>
        <translation>Ohne Zone</translation>
    </message>
    <message>
        <source>Zone too</source>
        <translation>Zone auch</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>WEITER</translation>
    </message>
    <message>
        <source>DONE</source>
        <translation>FERTIG</translation>
    </message>
    <message>
        <source>Go back and read it again.</source>
        <translation>Geh zurück und lies noch einmal ab.</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Ablesen mit</translation>
    </message>
    <message>
        <source>The same marks for another lift too</source>
        <translation>Dieselben Marken auch für eine andere Übung</translation>
    </message>
</context>
<context>
    <name>MeasureWhat</name>
    <message>
        <source>begun, not kept</source>
        <translation>begonnen, nicht behalten</translation>
    </message>
    <message>
        <source>A chain</source>
        <translation>Eine Kette</translation>
    </message>
    <message>
        <source>a minute: a scale and a tape, or a tape and one link</source>
        <translation>eine Minute: Waage und Maßband, oder Maßband und ein Glied</translation>
    </message>
    <message>
        <source>A band</source>
        <translation>Ein Band</translation>
    </message>
    <message>
        <source>four minutes: plates, somewhere to hang it, a tape</source>
        <translation>vier Minuten: Scheiben, ein Platz zum Aufhängen, Maßband</translation>
    </message>
    <message>
        <source>A bench aid</source>
        <translation>Eine Bankhilfe</translation>
    </message>
    <message>
        <source>five minutes: the lifter, a bar, plates, a tape</source>
        <translation>fünf Minuten: die Athletin, Stange, Scheiben, Maßband</translation>
    </message>
    <message>
        <source>A cam machine</source>
        <translation>Eine Kurven­maschine</translation>
    </message>
    <message>
        <source>five minutes: a ruler and a level, or a hanging scale</source>
        <translation>fünf Minuten: Lineal und Wasserwaage, oder eine Hängewaage</translation>
    </message>
    <message>
        <source>A hanging scale</source>
        <translation>Eine Hängewaage</translation>
    </message>
    <message>
        <source>two minutes: something of known mass</source>
        <translation>zwei Minuten: etwas mit bekannter Masse</translation>
    </message>
    <message>
        <source>A bar or plates</source>
        <translation>Stange oder Scheiben</translation>
    </message>
    <message>
        <source>a minute: a scale that holds them</source>
        <translation>eine Minute: eine Waage, die sie trägt</translation>
    </message>
    <message>
        <source>A lead strap</source>
        <translation>Ein Riemen</translation>
    </message>
    <message>
        <source>a minute: a tape and a scale</source>
        <translation>eine Minute: Maßband und Waage</translation>
    </message>
    <message>
        <source>A rack</source>
        <translation>Ein Rack</translation>
    </message>
    <message>
        <source>two minutes: a tape</source>
        <translation>zwei Minuten: Maßband</translation>
    </message>
    <message>
        <source>A tyre</source>
        <translation>Ein Reifen</translation>
    </message>
    <message>
        <source>a minute: a hanging scale and a tape</source>
        <translation>eine Minute: Hängewaage und Maßband</translation>
    </message>
    <message>
        <source>A log</source>
        <translation>Ein Stamm</translation>
    </message>
    <message>
        <source>a minute: a hanging scale</source>
        <translation>eine Minute: Hängewaage</translation>
    </message>
    <message>
        <source>A stone</source>
        <translation>Ein Stein</translation>
    </message>
    <message>
        <source>a minute: a scale, or a tape</source>
        <translation>eine Minute: Waage oder Maßband</translation>
    </message>
    <message>
        <source>A keg or sandbag</source>
        <translation>Ein Fass oder Sandsack</translation>
    </message>
    <message>
        <source>a minute: a scale, or how much is in it</source>
        <translation>eine Minute: Waage, oder wie viel darin ist</translation>
    </message>
    <message>
        <source>A sled</source>
        <translation>Ein Schlitten</translation>
    </message>
    <message>
        <source>a minute: a scale and a tape</source>
        <translation>eine Minute: Waage und Maßband</translation>
    </message>
    <message>
        <source>Handles, a yoke or a frame</source>
        <translation>Griffe, ein Joch oder ein Rahmen</translation>
    </message>
    <message>
        <source>a minute: a scale, or its mark</source>
        <translation>eine Minute: Waage oder Aufschrift</translation>
    </message>
    <message>
        <source>A kettlebell or dumbbell</source>
        <translation>Eine Kettlebell oder Kurzhantel</translation>
    </message>
    <message>
        <source>a minute: a scale, or its mark; a hand to try it</source>
        <translation>eine Minute: Waage oder Aufschrift; eine Hand zum Probieren</translation>
    </message>
</context>
<context>
    <name>MeasureWhatPage</name>
    <message>
        <source>Measure new kit</source>
        <translation>Neues Material messen</translation>
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
        <translation>gemessen; antippen zum Berichtigen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
</context>
<context>
    <name>MeasurementsView</name>
    <message>
        <source>this one counts</source>
        <translation>diese zählt</translation>
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
        <translation>Bevor du weiter­machst</translation>
    </message>
    <message>
        <source>I HAVE READ IT</source>
        <translation>ICH HABE ES GELESEN</translation>
    </message>
</context>
<context>
    <name>NumberKeys</name>
    <message>
        <source>decimal point</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>rub out</source>
        <translation>löschen</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Load on the bar</source>
        <translation>Last auf der Stange</translation>
    </message>
    <message>
        <source>A pair of plates, each</source>
        <translation>Ein Paar Scheiben, je</translation>
    </message>
    <message>
        <source>Hanging %1: mass</source>
        <translation>Hängung %1: Masse</translation>
    </message>
    <message>
        <source>Hanging %1: length</source>
        <translation>Hängung %1: Länge</translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation>jetzt %1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 at least</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>%1 at most</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>once keyed</source>
        <translation>nach dem Eintippen</translation>
    </message>
    <message>
        <source>%1? Last time it was %2.</source>
        <translation>%1? Letztes Mal waren es %2.</translation>
    </message>
    <message>
        <source>%1? Last time it was %2. Pounds for kilograms?</source>
        <translation>%1? Letztes Mal waren es %2. Pfund statt Kilogramm?</translation>
    </message>
    <message>
        <source>%1? Last time it was %2. Look at the noughts and the point.</source>
        <translation>%1? Letztes Mal waren es %2. Sieh auf Nullen und Komma.</translation>
    </message>
</context>
<context>
    <name>OddHanging</name>
    <message>
        <source>Read it again</source>
        <translation>Noch einmal ablesen</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
</context>
<context>
    <name>OriginPage</name>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Which number</source>
        <translation>Welche Zahl</translation>
    </message>
    <message>
        <source>There is no number yet: enter her bar marks, and hang what was measured far enough.</source>
        <translation>Noch gibt es keine Zahl: Trag ihre Stangen­marken ein und häng, was weit genug gemessen ist.</translation>
    </message>
    <message>
        <source>The parts add up to the number. ± is for 19 times in 20; parts that have nothing to do with each other add in squares: JCGM 100:2008.</source>
        <translation>Die Teile ergeben zusammen die Zahl. ± gilt in 19 von 20 Fällen; Teile, die nichts miteinander zu tun haben, addieren sich im Quadrat: JCGM 100:2008.</translation>
    </message>
</context>
<context>
    <name>OriginView</name>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % von dem, was sie unsicher macht</translation>
    </message>
</context>
<context>
    <name>PageStack</name>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
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
        <translation>Fünf Wörter</translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation>Deine Passphrase</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>Draw five other words</source>
        <translation>Fünf andere Wörter ziehen</translation>
    </message>
    <message>
        <source>NEXT</source>
        <translation>WEITER</translation>
    </message>
    <message>
        <source>recovery code</source>
        <translation>Rettungs­code</translation>
    </message>
    <message>
        <source>Five words, to be read by eye</source>
        <translation>Fünf Wörter, mit dem Auge zu lesen</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message numerus="yes">
        <source>%n characters or more; a sentence is easiest</source>
        <translation>
            <numerusform>%n Zeichen oder mehr; ein Satz ist am leichtesten</numerusform>
            <numerusform>%n Zeichen oder mehr; ein Satz ist am leichtesten</numerusform>
        </translation>
    </message>
    <message>
        <source>Type them, with a space between</source>
        <translation>Gib sie ein, mit Leerzeichen dazwischen</translation>
    </message>
    <message>
        <source>The same once more</source>
        <translation>Dasselbe noch einmal</translation>
    </message>
</context>
<context>
    <name>PickPage</name>
    <message>
        <source>Clearance</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
</context>
<context>
    <name>PlacesBar</name>
    <message>
        <source>Places</source>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>you are here</source>
        <translation>du bist hier</translation>
    </message>
</context>
<context>
    <name>Preferences</name>
    <message>
        <source>as the device</source>
        <translation>wie das Gerät</translation>
    </message>
</context>
<context>
    <name>PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>Ein­stellungen</translation>
    </message>
    <message>
        <source>units belong to the vault, the rest to this device</source>
        <translation>Einheiten gehören zum Tresor, der Rest zu diesem Gerät</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Remove the example</source>
        <translation>Beispiel entfernen</translation>
    </message>
    <message>
        <source>Masses and pulls in</source>
        <translation>Massen und Züge in</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund (lb)</translation>
    </message>
    <message>
        <source>Heights and lengths in</source>
        <translation>Höhen und Längen in</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>What was typed stays as it was typed, and plates keep their marks.</source>
        <translation>Ein­gegebenes bleibt, wie es eingegeben wurde, und Scheiben behalten ihre Aufschrift.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>for the sun</source>
        <translation>für die Sonne</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>größer</translation>
    </message>
    <message>
        <source>large</source>
        <translation>groß</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>am größten</translation>
    </message>
    <message>
        <source>Thumb, with the phone on its side</source>
        <translation>Daumen, wenn das Handy quer liegt</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Keys that answer a lift</source>
        <translation>Tasten zu einem Versuch</translation>
    </message>
    <message>
        <source>big, for gloves</source>
        <translation>groß, für Handschuhe</translation>
    </message>
    <message>
        <source>Display, while the vault is open</source>
        <translation>Bildschirm, solange der Tresor offen ist</translation>
    </message>
    <message>
        <source>stays on</source>
        <translation>bleibt an</translation>
    </message>
    <message>
        <source>as the device</source>
        <translation>wie das Gerät</translation>
    </message>
    <message>
        <source>Your limits</source>
        <translation>Deine Grenzen</translation>
    </message>
    <message>
        <source>tyre, way down, anchors, how long a measurement counts</source>
        <translation>Reifen, Weg nach unten, Anker, wie lange eine Messung zählt</translation>
    </message>
    <message>
        <source>as shipped</source>
        <translation>wie aus­geliefert</translation>
    </message>
    <message numerus="yes">
        <source>%n of your own</source>
        <translation>
            <numerusform>%n eigene</numerusform>
            <numerusform>%n eigene</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PullsEditor</name>
    <message>
        <source>Height of the bar</source>
        <translation>Höhe der Stange</translation>
    </message>
    <message>
        <source>its middle above the floor, held still by the rack</source>
        <translation>ihre Mitte über dem Boden, vom Rack festgehalten</translation>
    </message>
    <message>
        <source>Greatest pull</source>
        <translation>Größter Zug</translation>
    </message>
    <message>
        <source>what the scale showed, the bar&apos;s weight among it</source>
        <translation>was die Waage zeigte, das Gewicht der Stange darin</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>the smallest difference that it shows</source>
        <translation>der kleinste Unterschied, den sie zeigt</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>PullsPage</name>
    <message>
        <source>What she can hold</source>
        <translation>Was sie halten kann</translation>
    </message>
    <message>
        <source>KEEP THIS PULL</source>
        <translation>ZUG BEHALTEN</translation>
    </message>
    <message>
        <source>She pulls as hard as she can on a bar that the rack holds, at three heights at least, from near her lowest to near her highest; a scale or a plate shows how hard.</source>
        <translation>Sie zieht so fest sie kann an einer Stange, die das Rack festhält, an mindestens drei Höhen, von nahe ihrer tiefsten bis nahe ihrer höchsten; eine Waage oder eine Messplatte zeigt, wie fest.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>A greatest pull is a maximal test</source>
        <translation>Ein größter Zug ist ein Maximaltest</translation>
    </message>
    <message>
        <source>Warm, cleared for it and supervised; the rack bolted or loaded so that it cannot move, and the bar under pins, never on hooks alone. Build the pull up over a second, without a jerk. Stop for pain, dizziness, chest pain, sudden headache or numbness. Under 18 only with a named approval. Your local rules come first.</source>
        <translation>Aufgewärmt, dafür freigegeben und beaufsichtigt; das Rack verschraubt oder so beladen, dass es sich nicht bewegt, und die Stange unter Stiften, nie nur auf Haken. Den Zug über eine Sekunde aufbauen, ohne Ruck. Aufhören bei Schmerz, Schwindel, Brustschmerz, plötzlichem Kopfschmerz oder Taubheit. Unter 18 nur mit namentlicher Erlaubnis. Die Regeln vor Ort gehen vor.</translation>
    </message>
    <message>
        <source>The desk is laid out for nobody: these pulls go with the marks. Choose an athlete and a lift to keep them.</source>
        <translation>Das hier ist für niemanden aufgebaut: Diese Züge gehen mit den Marken. Eine Athletin und eine Übung wählen, um sie zu behalten.</translation>
    </message>
    <message>
        <source>Pulls count together for 28 days; an older one is another strength. One pull is taken to spread by 5 % until three are repeats.</source>
        <translation>Züge zählen 28 Tage lang zusammen; ein älterer ist eine andere Kraft. Einem Zug werden 5 % Streuung zugeschrieben, bis drei wiederholt sind.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
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
        <translation>Unterstes Loch</translation>
    </message>
    <message>
        <source>floor to the middle of a bar that lies there</source>
        <translation>Boden bis zur Mitte einer Stange, die dort liegt</translation>
    </message>
    <message>
        <source>Hole to hole</source>
        <translation>Loch zu Loch</translation>
    </message>
    <message>
        <source>middle to middle</source>
        <translation>Mitte zu Mitte</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>from the lowest to the highest that is used</source>
        <translation>vom untersten bis zum obersten, das benutzt wird</translation>
    </message>
    <message>
        <source>holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>Bands, place %1</source>
        <translation>Bänder, Platz %1</translation>
    </message>
    <message>
        <source>floor to where a band holds</source>
        <translation>Boden bis dahin, wo ein Band hält</translation>
    </message>
    <message>
        <source>floor to where a band holds; may be left out</source>
        <translation>Boden bis dahin, wo ein Band hält; kannst du weglassen</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Measure a rack</source>
        <translation>Rack messen</translation>
    </message>
    <message>
        <source>With its holes known, a bar mark is a hole&apos;s number, and bands find their anchor. Measure at the rack as it stands, with the bar in it.</source>
        <translation>Sind die Löcher bekannt, ist eine Stangen­marke eine Lochnummer, und Bänder finden ihren Anker. Miss am Rack, wie es steht, mit der Stange darin.</translation>
    </message>
    <message>
        <source>It has</source>
        <translation>Es hat</translation>
    </message>
    <message>
        <source>holes for the bar</source>
        <translation>Löcher für die Stange</translation>
    </message>
    <message>
        <source>places for bands only</source>
        <translation>nur Plätze für Bänder</translation>
    </message>
    <message>
        <source>lowest, distance, how many</source>
        <translation>unterstes, Abstand, wie viele</translation>
    </message>
    <message>
        <source>hooks, pegs, a beam</source>
        <translation>Haken, Zapfen, ein Balken</translation>
    </message>
    <message>
        <source>Add a place for bands</source>
        <translation>Platz für Bänder hinzufügen</translation>
    </message>
    <message>
        <source>How high is the lowest hole?</source>
        <translation>Wie hoch ist das unterste Loch?</translation>
    </message>
    <message>
        <source>How far from hole to hole?</source>
        <translation>Wie weit von Loch zu Loch?</translation>
    </message>
    <message>
        <source>How many holes?</source>
        <translation>Wie viele Löcher?</translation>
    </message>
    <message>
        <source>How high can a band be anchored?</source>
        <translation>Wie hoch kann ein Band verankert werden?</translation>
    </message>
    <message>
        <source>Floor to the middle of a bar that lies in its hook there, read at the sleeve.</source>
        <translation>Boden bis zur Mitte einer Stange, die dort in ihrem Haken liegt, an der Hülse abgelesen.</translation>
    </message>
    <message>
        <source>Middle to middle. Over ten of them, divided by ten, it is surer.</source>
        <translation>Mitte zu Mitte. Über zehn davon, geteilt durch zehn, ist es sicherer.</translation>
    </message>
    <message>
        <source>From the lowest, which is number 1, to the highest that is used.</source>
        <translation>Vom untersten, das ist Nummer 1, bis zum obersten, das benutzt wird.</translation>
    </message>
    <message>
        <source>Floor to where the band will hold. It has to hold more than the band pulls.</source>
        <translation>Boden bis dahin, wo das Band halten wird. Es muss mehr halten, als das Band zieht.</translation>
    </message>
    <message>
        <source>Its heights: not known yet</source>
        <translation>Seine Höhen: noch nicht bekannt</translation>
    </message>
    <message>
        <source>A mark read at a hole counts as good to a centimetre, as by tape (our choice).</source>
        <translation>Eine am Loch abgelesene Marke gilt auf einen Zentimeter genau, wie mit Maßband (unsere Wahl).</translation>
    </message>
    <message>
        <source>Places where bands can be anchored may be added.</source>
        <translation>Plätze, an denen Bänder verankert werden können, lassen sich hinzufügen.</translation>
    </message>
    <message numerus="yes">
        <source>Rack, %n holes</source>
        <translation>
            <numerusform>Rack, %n Loch</numerusform>
            <numerusform>Rack, %n Löcher</numerusform>
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
        <translation>Auf­wärmen</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>%1, the working set</source>
        <translation>%1, der Arbeitssatz</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Share of the working pull</source>
        <translation>Anteil am Arbeitszug</translation>
    </message>
    <message>
        <source>Leave the shares so</source>
        <translation>Anteile so lassen</translation>
    </message>
    <message>
        <source>Change the shares</source>
        <translation>Anteile ändern</translation>
    </message>
    <message>
        <source>Shares of the pull</source>
        <translation>Anteile des Zugs</translation>
    </message>
    <message>
        <source>Change plates with what hangs at rest</source>
        <translation>Scheiben nur wechseln, wenn alles ruht</translation>
    </message>
    <message>
        <source>Take the pull off bands before a plate comes off, and never strip plates with bands from above on. Chains stay even on both sides, feet clear of them.</source>
        <translation>Bänder entspannen, bevor eine Scheibe abgeht, und nie Scheiben abziehen, solange Bänder von oben hängen. Ketten bleiben auf beiden Seiten gleich, die Füße weg davon.</translation>
    </message>
    <message>
        <source>The shares are ours, and common practice: step them as you know her.</source>
        <translation>Die Anteile sind unsere Wahl und übliche Praxis: Stell sie so ein, wie du sie kennst.</translation>
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
        <translation>zieht %1</translation>
    </message>
    <message>
        <source>as light as it gets: what hangs pulls more than that alone</source>
        <translation>leichter geht es nicht: Was hängt, zieht allein schon mehr</translation>
    </message>
    <message>
        <source>nothing here makes a load between: the same as before</source>
        <translation>hier gibt es keine Last dazwischen: dieselbe wie davor</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100 %</translation>
    </message>
    <message>
        <source>Up to %1 %2</source>
        <translation>Bis %1 %2</translation>
    </message>
    <message>
        <source>The least that can be hung with it: %1 of iron, which pulls %2.</source>
        <translation>Das Wenigste, das damit hängen kann: %1 Eisen, das zieht %2.</translation>
    </message>
    <message>
        <source>The pull of what hangs is not known: measure further first.</source>
        <translation>Der Zug dessen, was hängt, ist nicht bekannt: erst weiter messen.</translation>
    </message>
</context>
<context>
    <name>ReadOut</name>
    <message>
        <source>%1, filled in</source>
        <translation>%1, voraus­gefüllt</translation>
    </message>
    <message>
        <source>%1, kept</source>
        <translation>%1, behalten</translation>
    </message>
</context>
<context>
    <name>ReadingSteps</name>
    <message>
        <source>That is enough</source>
        <translation>Das reicht</translation>
    </message>
    <message>
        <source>One more reading</source>
        <translation>Noch eine Ablesung</translation>
    </message>
</context>
<context>
    <name>ReadingsEditor</name>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>ReadingsGuide</name>
    <message>
        <source>first look it over</source>
        <translation>erst durchsehen</translation>
    </message>
    <message>
        <source>readings: %1</source>
        <translation>Ablesungen: %1</translation>
    </message>
    <message>
        <source>Good enough as it is</source>
        <translation>Gut genug, wie es ist</translation>
    </message>
</context>
<context>
    <name>ReadingsSheet</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>One more reading</source>
        <translation>Noch eine Ablesung</translation>
    </message>
    <message>
        <source>Read it again, or leave it out.</source>
        <translation>Lies sie noch einmal ab oder lass sie weg.</translation>
    </message>
    <message>
        <source>Take in again: reading %1</source>
        <translation>Wieder aufnehmen: Ablesung %1</translation>
    </message>
    <message>
        <source>Leave reading %1 out</source>
        <translation>Ablesung %1 weglassen</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Name, wenn du einen gibst</translation>
    </message>
</context>
<context>
    <name>ReleaseForm</name>
    <message>
        <source>Partner&apos;s push</source>
        <translation>Druck des Partners</translation>
    </message>
    <message>
        <source>read on a scale; leave out when it never was</source>
        <translation>auf einer Waage abgelesen; weglassen, wenn nie</translation>
    </message>
    <message>
        <source>One dumbbell</source>
        <translation>Eine Kurzhantel</translation>
    </message>
    <message>
        <source>of the two that are dropped</source>
        <translation>von den zweien, die fallen</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wieder­holungen</translation>
    </message>
    <message>
        <source>in one set</source>
        <translation>in einem Satz</translation>
    </message>
    <message>
        <source>Way down, s</source>
        <translation>Weg nach unten, s</translation>
    </message>
    <message>
        <source>seconds from top to bottom</source>
        <translation>Sekunden von oben nach unten</translation>
    </message>
    <message>
        <source>Reps of a cluster</source>
        <translation>Wieder­holungen einer Gruppe</translation>
    </message>
    <message>
        <source>between two rests in the set</source>
        <translation>zwischen zwei Pausen im Satz</translation>
    </message>
    <message>
        <source>Rest in the set, s</source>
        <translation>Pause im Satz, s</translation>
    </message>
    <message>
        <source>seconds, while it is put back</source>
        <translation>Sekunden, während es angehängt wird</translation>
    </message>
    <message>
        <source>One hook weighs</source>
        <translation>Ein Haken wiegt</translation>
    </message>
    <message>
        <source>empty; the other one is like it</source>
        <translation>leer; der andere ist ebenso</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>the smallest difference that it shows</source>
        <translation>der kleinste Unterschied, den sie zeigt</translation>
    </message>
    <message>
        <source>Bar&apos;s centre to the seat</source>
        <translation>Mitte der Stange bis zum Sitz</translation>
    </message>
    <message>
        <source>half of the sleeve&apos;s thickness</source>
        <translation>halbe Dicke der Hülse</translation>
    </message>
    <message>
        <source>Drop until the lip is clear</source>
        <translation>Sinkt, bis die Lippe frei ist</translation>
    </message>
    <message>
        <source>tried with an empty bar, the hook&apos;s foot on the floor</source>
        <translation>mit leerer Stange probiert, der Fuß des Hakens am Boden</translation>
    </message>
    <message>
        <source>One hook carries</source>
        <translation>Ein Haken trägt</translation>
    </message>
    <message>
        <source>what is written on it, its frame apart</source>
        <translation>was darauf steht, ohne sein Gestell</translation>
    </message>
    <message>
        <source>Room for plates</source>
        <translation>Platz für Scheiben</translation>
    </message>
    <message>
        <source>on one hook</source>
        <translation>an einem Haken</translation>
    </message>
    <message>
        <source>Another setting</source>
        <translation>Noch eine Einstellung</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>Einstellung %1</translation>
    </message>
    <message>
        <source>seat to foot</source>
        <translation>Sitz bis Fuß</translation>
    </message>
    <message>
        <source>Rep %1, lowest bar</source>
        <translation>Wieder­holung %1, tiefste Stange</translation>
    </message>
    <message>
        <source>bar&apos;s centre above the floor, plain bar</source>
        <translation>Mitte der Stange über dem Boden, ohne Haken</translation>
    </message>
    <message>
        <source>Or on a box</source>
        <translation>Oder auf einer Box</translation>
    </message>
    <message>
        <source>bar&apos;s centre above the floor, the same each time</source>
        <translation>Mitte der Stange über dem Boden, jedes Mal gleich</translation>
    </message>
    <message>
        <source>Free above that by</source>
        <translation>So weit darüber frei</translation>
    </message>
    <message>
        <source>on a box yours to say</source>
        <translation>auf einer Box sagst du es</translation>
    </message>
    <message>
        <source>left out, twice her own spread</source>
        <translation>weggelassen: das Doppelte ihrer Streuung</translation>
    </message>
    <message>
        <source>From side to side</source>
        <translation>Von Seite zu Seite</translation>
    </message>
    <message>
        <source>from hook to hook, or from plates to plates</source>
        <translation>von Haken zu Haken oder von Scheiben zu Scheiben</translation>
    </message>
    <message>
        <source>From hand to hand</source>
        <translation>Von Hand zu Hand</translation>
    </message>
    <message>
        <source>where hands hold the bar; leave out in a squat</source>
        <translation>wo Hände die Stange halten; in der Kniebeuge weglassen</translation>
    </message>
    <message>
        <source>Arched chest</source>
        <translation>Gewölbte Brust</translation>
    </message>
    <message>
        <source>floor to its top, lying as she will lie</source>
        <translation>Boden bis oben darauf, so wie sie liegen wird</translation>
    </message>
    <message>
        <source>Throat</source>
        <translation>Kehle</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>ReleasePlanner</name>
    <message>
        <source>On the way up</source>
        <translation>Auf dem Weg nach oben</translation>
    </message>
    <message>
        <source>bar, collars and plates</source>
        <translation>Stange, Verschlüsse und Scheiben</translation>
    </message>
    <message>
        <source>On the way down</source>
        <translation>Auf dem Weg nach unten</translation>
    </message>
    <message>
        <source>with all that is let go</source>
        <translation>mit allem, was losgelassen wird</translation>
    </message>
    <message>
        <source>per cent of her 1RM</source>
        <translation>Prozent ihres 1RM</translation>
    </message>
    <message>
        <source>per cent of the way up</source>
        <translation>Prozent des Wegs nach oben</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
    <message>
        <source>Do not lift this</source>
        <translation>Das nicht heben</translation>
    </message>
    <message>
        <source>Not ready: something is still to measure</source>
        <translation>Nicht bereit: Es ist noch etwas zu messen</translation>
    </message>
    <message>
        <source>Not ready: for nobody yet, so nobody&apos;s clearance can be looked up</source>
        <translation>Nicht bereit: noch für niemanden, also gibt es keine Freigabe nachzusehen</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>Look the cautions over first</source>
        <translation>Zuerst die Hinweise durchgehen</translation>
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
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Not ready: hang this bar first</source>
        <translation>Nicht bereit: zuerst diese Stange hängen</translation>
    </message>
    <message>
        <source>Not ready: see the set-up</source>
        <translation>Nicht bereit: siehe Aufbau</translation>
    </message>
</context>
<context>
    <name>RemoveSamplePage</name>
    <message>
        <source>Remove the example?</source>
        <translation>Beispiel entfernen?</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Ein­stellungen</translation>
    </message>
    <message>
        <source>Remove the example</source>
        <translation>Beispiel entfernen</translation>
    </message>
    <message>
        <source>The invented people of Marrow Hill leave this device, with all that was tried out on them. This cannot be undone.</source>
        <translation>Die erfundenen Leute von Marrow Hill verlassen dieses Gerät, mit allem, was an ihnen ausprobiert wurde. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>A vault of your own is another one, and stays as it is. The app then starts as new.</source>
        <translation>Ein eigener Tresor ist ein anderer und bleibt, wie er ist. Die App beginnt dann wie neu.</translation>
    </message>
</context>
<context>
    <name>RetypePage</name>
    <message>
        <source>From your paper</source>
        <translation>Von deinem Papier</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>MAKE THE VAULT</source>
        <translation>TRESOR ANLEGEN</translation>
    </message>
    <message>
        <source>Recovery code; hyphens and capitals do not matter</source>
        <translation>Rettungs­code; Binde­striche und Groß­schreibung sind egal</translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>To be settled</source>
        <translation>Zu klären</translation>
    </message>
    <message>
        <source>tap what is right</source>
        <translation>tippe an, was stimmt</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Nothing waits here. When two devices say different things about the same, both stand here until you choose.</source>
        <translation>Hier wartet nichts. Sagen zwei Geräte Ver­schiedenes über dasselbe, steht hier beides, bis du wählst.</translation>
    </message>
</context>
<context>
    <name>RunEditor</name>
    <message>
        <source>How fast: not known yet</source>
        <translation>Wie schnell: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Choose the surface first.</source>
        <translation>Wähle zuerst den Untergrund.</translation>
    </message>
    <message>
        <source>Still to do: what lay on the sled, how far, and how long it took.</source>
        <translation>Noch zu tun: was auf dem Schlitten lag, wie weit und wie lange es dauerte.</translation>
    </message>
    <message>
        <source>It took</source>
        <translation>Es dauerte</translation>
    </message>
    <message>
        <source>by hand: 0.1 s give or take is counted in</source>
        <translation>von Hand: 0,1 s hin oder her sind eingerechnet</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>On the sled</source>
        <translation>Auf dem Schlitten</translation>
    </message>
    <message>
        <source>plates on it; 0 with none</source>
        <translation>Scheiben darauf; 0 ohne</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Wie weit</translation>
    </message>
    <message>
        <source>between the two marks, from a flying start</source>
        <translation>zwischen den beiden Marken, mit Anlauf</translation>
    </message>
    <message>
        <source>Her belt</source>
        <translation>Ihr Gürtel</translation>
    </message>
    <message>
        <source>above the ground; leave out when the strap is level</source>
        <translation>über dem Boden; weglassen, wenn der Gurt waagrecht ist</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>RunPage</name>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>a timed run on %1</source>
        <translation>ein gestoppter Lauf auf %1</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Three runs with different loads, fresh for each, make her own line. Nobody else&apos;s line is used for her.</source>
        <translation>Drei Läufe mit verschiedenen Lasten, ausgeruht vor jedem, ergeben ihre eigene Gerade. Die von jemand anderem gilt für sie nicht.</translation>
    </message>
</context>
<context>
    <name>ScaleChoice</name>
    <message>
        <source>another scale</source>
        <translation>andere Waage</translation>
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
        <translation>Zeigt leer, unter 0</translation>
    </message>
    <message>
        <source>Shows empty</source>
        <translation>Zeigt leer</translation>
    </message>
    <message>
        <source>with nothing on it</source>
        <translation>ohne etwas daran</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>Known mass %1</source>
        <translation>Bekannte Masse %1</translation>
    </message>
    <message>
        <source>what hangs on it</source>
        <translation>was daran hängt</translation>
    </message>
    <message>
        <source>It reads, %1</source>
        <translation>Sie zeigt, %1</translation>
    </message>
    <message>
        <source>once it hangs still</source>
        <translation>sobald es ruhig hängt</translation>
    </message>
    <message>
        <source>There is no such entry.</source>
        <translation>So einen Eintrag gibt es nicht.</translation>
    </message>
    <message>
        <source>Check a scale</source>
        <translation>Waage prüfen</translation>
    </message>
    <message>
        <source>Whatever is weighed is out by as much as the scale is. Hang something of known mass on it: a plate made to a competition standard, or water, of which a litre weighs %1. Never more than the scale and its hook are made for; feet clear of what hangs.</source>
        <translation>Was gewogen wird, liegt so weit daneben wie die Waage. Häng etwas mit bekannter Masse daran: eine Scheibe nach Wettkampf­norm oder Wasser; ein Liter davon wiegt %1. Nie mehr, als wofür die Waage und ihr Haken gemacht sind; Füße weg von dem, was hängt.</translation>
    </message>
    <message>
        <source>Empty, it shows</source>
        <translation>Leer zeigt sie</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 oder mehr</translation>
    </message>
    <message>
        <source>under 0</source>
        <translation>unter 0</translation>
    </message>
    <message>
        <source>One more known mass</source>
        <translation>Noch eine bekannte Masse</translation>
    </message>
    <message>
        <source>What does it show empty?</source>
        <translation>Was zeigt sie leer?</translation>
    </message>
    <message>
        <source>How fine does it read?</source>
        <translation>Wie fein zeigt die Waage?</translation>
    </message>
    <message>
        <source>What hangs on it?</source>
        <translation>Was hängt daran?</translation>
    </message>
    <message>
        <source>What does it read?</source>
        <translation>Was zeigt sie?</translation>
    </message>
    <message>
        <source>Hanging free, with nothing on it but the hook.</source>
        <translation>Frei hängend, mit nichts daran als dem Haken.</translation>
    </message>
    <message>
        <source>Its true mass, with the strap. Best about as heavy as what will be weighed.</source>
        <translation>Die wahre Masse, mit dem Riemen. Am besten etwa so schwer wie das, was gewogen wird.</translation>
    </message>
    <message>
        <source>Once it hangs still, just as it shows.</source>
        <translation>Sobald es ruhig hängt, genau wie sie es zeigt.</translation>
    </message>
    <message>
        <source>How good it is: not known yet</source>
        <translation>Wie gut sie ist: noch nicht bekannt</translation>
    </message>
    <message>
        <source>It is more than a step out, and more than half a per cent: have it set right, or use another.</source>
        <translation>Sie liegt mehr als einen Teilschritt und mehr als ein halbes Prozent daneben: Lass sie einstellen oder nimm eine andere.</translation>
    </message>
    <message>
        <source>A second mass, near the heaviest you weigh, would make it surer.</source>
        <translation>Eine zweite Masse, nahe am Schwersten, das du wiegst, würde es sicherer machen.</translation>
    </message>
    <message>
        <source>Scale, steps of %1</source>
        <translation>Waage, Teilschritt %1</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
</context>
<context>
    <name>ScaleRow</name>
    <message>
        <source>Weighed on</source>
        <translation>Gewogen mit</translation>
    </message>
</context>
<context>
    <name>SecretEntry</name>
    <message>
        <source>That did not fit: nothing was added</source>
        <translation>Das passte nicht hinein: nichts hinzugefügt</translation>
    </message>
    <message numerus="yes">
        <source>%n characters</source>
        <translation>
            <numerusform>%n Zeichen</numerusform>
            <numerusform>%n Zeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show what was typed: %1</source>
        <translation>Zeigen, was eingegeben wurde: %1</translation>
    </message>
</context>
<context>
    <name>SetupHangs</name>
    <message>
        <source>What hangs</source>
        <translation>Was hängt</translation>
    </message>
    <message>
        <source>Only iron. Hang a chain or a band.</source>
        <translation>Nur Eisen. Häng eine Kette oder ein Band an.</translation>
    </message>
    <message>
        <source>Hang more</source>
        <translation>Mehr anhängen</translation>
    </message>
    <message>
        <source>What do I hang?</source>
        <translation>Was hänge ich an?</translation>
    </message>
</context>
<context>
    <name>SetupKeeping</name>
    <message>
        <source>Keep set-up</source>
        <translation>Aufbau behalten</translation>
    </message>
    <message>
        <source>What hangs was last looked over on %1.</source>
        <translation>Was hängt, wurde zuletzt am %1 durch­gesehen.</translation>
    </message>
    <message>
        <source>Choose who lifts it</source>
        <translation>Wähle, wer es hebt</translation>
    </message>
</context>
<context>
    <name>SetupLoad</name>
    <message>
        <source>each side</source>
        <translation>je Seite</translation>
    </message>
    <message>
        <source>Bar and plates here</source>
        <translation>Stange und Scheiben hier</translation>
    </message>
    <message>
        <source>change</source>
        <translation>ändern</translation>
    </message>
</context>
<context>
    <name>SetupMeans</name>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>At each height</source>
        <translation>In jeder Höhe</translation>
    </message>
</context>
<context>
    <name>SetupPage</name>
    <message>
        <source>What she lifts</source>
        <translation>Was sie hebt</translation>
    </message>
    <message>
        <source>for nobody yet, so it cannot be kept</source>
        <translation>noch für niemanden, kann also nicht behalten werden</translation>
    </message>
    <message>
        <source>Her bar marks</source>
        <translation>Ihre Stangen­marken</translation>
    </message>
    <message>
        <source>Enter her bar marks</source>
        <translation>Trag ihre Stangen­marken ein</translation>
    </message>
    <message>
        <source>Of her 1RM</source>
        <translation>Von ihrem 1RM</translation>
    </message>
    <message>
        <source>Warm up to it</source>
        <translation>Dazu aufwärmen</translation>
    </message>
    <message>
        <source>Heavier on the way down</source>
        <translation>Schwerer auf dem Weg nach unten</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>SetupPicture</name>
    <message>
        <source>Pull by height: %1</source>
        <translation>Zug nach Höhe: %1</translation>
    </message>
</context>
<context>
    <name>SetupsPage</name>
    <message>
        <source>kept set-ups, the last first</source>
        <translation>behaltene Aufbauten, der letzte zuerst</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>None is kept yet. Choose a lift under Bar marks, hang what she lifts, and keep it there.</source>
        <translation>Noch ist keiner behalten. Wähle unter „Stangen­marken“ eine Übung, leg auf, was sie hebt, und behalte es dort.</translation>
    </message>
</context>
<context>
    <name>SheetHead</name>
    <message>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
</context>
<context>
    <name>SideTag</name>
    <message>
        <source>L</source>
        <comment>left</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>R</source>
        <comment>right</comment>
        <translation>R</translation>
    </message>
    <message>
        <source>B</source>
        <comment>both</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>beide Seiten</translation>
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
        <translation>Davon bleibt nichts übrig: Nimm es stattdessen heraus.</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>SizePage</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>in place of %1</source>
        <translation>statt %1</translation>
    </message>
    <message>
        <source>What it said at first stays in the vault&apos;s journal and can be read here.</source>
        <translation>Was zuerst da stand, bleibt im Journal des Tresors und ist hier nachzulesen.</translation>
    </message>
</context>
<context>
    <name>SizesPage</name>
    <message>
        <source>body mass and height; tap one to put it right</source>
        <translation>Körpermasse und Größe; antippen zum Berichtigen</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>None is kept yet. Enter body mass or height on the athlete&apos;s page, and keep it.</source>
        <translation>Noch ist nichts behalten. Trag Körpermasse oder Größe auf der Seite der Athletin ein und behalte es.</translation>
    </message>
</context>
<context>
    <name>SizesView</name>
    <message>
        <source>changes not kept</source>
        <translation>Änderungen nicht behalten</translation>
    </message>
</context>
<context>
    <name>SledPage</name>
    <message>
        <source>Use</source>
        <translation>Benutzen</translation>
    </message>
    <message>
        <source>Time a run of hers</source>
        <translation>Einen Lauf von ihr stoppen</translation>
    </message>
    <message>
        <source>Pull it again, or on another ground</source>
        <translation>Noch einmal ziehen, oder auf anderem Untergrund</translation>
    </message>
    <message>
        <source>Pull it here</source>
        <translation>Hier ziehen</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Auf</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>On the sled</source>
        <translation>Auf dem Schlitten</translation>
    </message>
    <message>
        <source>Speed she loses</source>
        <translation>Tempo, das sie verliert</translation>
    </message>
    <message>
        <source>Clear lane, nobody in front of it. Stop for pain, dizziness, chest pain, sudden headache or numbness.</source>
        <translation>Freie Bahn, niemand davor. Schluss bei Schmerz, Schwindel, Brust­schmerz, plötzlichem Kopf­schmerz oder Taubheit.</translation>
    </message>
    <message>
        <source>Pushed, arms</source>
        <translation>Geschoben, Arme</translation>
    </message>
</context>
<context>
    <name>SledView</name>
    <message>
        <source>%1. Pulled on %2.</source>
        <translation>%1. Gezogen am %2.</translation>
    </message>
    <message>
        <source>%1; outside the loads it was pulled with, so less sure than it looks</source>
        <translation>%1; außerhalb der Lasten, mit denen er gezogen wurde, also weniger sicher, als es aussieht</translation>
    </message>
    <message>
        <source>%1 on it</source>
        <translation>%1 darauf</translation>
    </message>
    <message>
        <source>Free she runs %1 by her own line.</source>
        <translation>Frei läuft sie nach ihrer eigenen Geraden %1.</translation>
    </message>
    <message>
        <source>The empty sled costs more than that.</source>
        <translation>Der leere Schlitten kostet mehr als das.</translation>
    </message>
    <message>
        <source>Put on %1.</source>
        <translation>Leg %1 auf.</translation>
    </message>
    <message>
        <source>Put on %1: past her runs, so guessed.</source>
        <translation>Leg %1 auf: jenseits ihrer Läufe, also geschätzt.</translation>
    </message>
    <message>
        <source>On %1 %2 pull as hard.</source>
        <translation>Auf %1 ziehen %2 ebenso schwer.</translation>
    </message>
    <message>
        <source>On %1: %2</source>
        <translation>Auf %1: %2</translation>
    </message>
    <message>
        <source>It was not pulled here yet: friction is another on every ground, and in the wet.</source>
        <translation>Er wurde hier noch nicht gezogen: Die Reibung ist auf jedem Untergrund und bei Nässe eine andere.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1° down</source>
        <translation>%1° abwärts</translation>
    </message>
    <message>
        <source>Pushed: %1</source>
        <translation>Geschoben: %1</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Ein­stellungen</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>Lock the vault</source>
        <translation>Tresor sperren</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Athletin hinzufügen</translation>
    </message>
    <message>
        <source>Done lately</source>
        <translation>Zuletzt getan</translation>
    </message>
    <message>
        <source>To be settled</source>
        <translation>Zu klären</translation>
    </message>
    <message>
        <source>devices said different things</source>
        <translation>Geräte sagten Ver­schiedenes</translation>
    </message>
    <message>
        <source>Nobody is in the squad yet. A name is enough to begin with; bar marks, birth year and the rest can wait.</source>
        <translation>Noch ist niemand im Kader. Ein Name reicht für den Anfang; Stangen­marken, Geburtsjahr und der Rest können warten.</translation>
    </message>
</context>
<context>
    <name>SquadView</name>
    <message>
        <source>no bar marks</source>
        <translation>keine Stangen­marken</translation>
    </message>
    <message>
        <source>bar marks: %1</source>
        <translation>Stangen­marken: %1</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>alle</translation>
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
        <translation>Darf heute trainieren</translation>
    </message>
    <message>
        <source>Cleared for</source>
        <translation>Freigegeben für</translation>
    </message>
    <message>
        <source>lifts and methods, and by whom</source>
        <translation>Übungen und Methoden, und von wem</translation>
    </message>
</context>
<context>
    <name>StandingView</name>
    <message>
        <source>changes not kept</source>
        <translation>Änderungen nicht behalten</translation>
    </message>
    <message numerus="yes">
        <source>%n hold</source>
        <translation>
            <numerusform>%n gilt</numerusform>
            <numerusform>%n gelten</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
</context>
<context>
    <name>StatusEditor</name>
    <message>
        <source>Say how much: all, some or none.</source>
        <translation>Sag, wie viel: alles, manches oder nichts.</translation>
    </message>
    <message>
        <source>Say what not, by the keys or in words.</source>
        <translation>Sag, was nicht, mit den Tasten oder in Worten.</translation>
    </message>
    <message>
        <source>until it is lifted</source>
        <translation>bis er aufgehoben wird</translation>
    </message>
</context>
<context>
    <name>StatusPage</name>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>how much she may do</source>
        <translation>wie viel sie darf</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Lift it</source>
        <translation>Aufheben</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>once it is said who</source>
        <translation>sobald gesagt ist, wer</translation>
    </message>
    <message>
        <source>She may do</source>
        <translation>Sie darf</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>some</source>
        <translation>manches</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Not these lifts</source>
        <translation>Diese Übungen nicht</translation>
    </message>
    <message>
        <source>Not in this way</source>
        <translation>Auf diese Art nicht</translation>
    </message>
    <message>
        <source>In words; no diagnoses</source>
        <translation>In Worten; keine Diagnosen</translation>
    </message>
    <message>
        <source>All or none can be set now, what not has to wait</source>
        <translation>Alles oder nichts geht jetzt, was nicht muss warten</translation>
    </message>
    <message>
        <source>Who set it</source>
        <translation>Wer ihn gesetzt hat</translation>
    </message>
    <message>
        <source>by name or task, as the physiotherapist</source>
        <translation>mit Namen oder Aufgabe, etwa die Physio­therapeutin</translation>
    </message>
    <message>
        <source>Not this lift</source>
        <translation>Diese Übung nicht</translation>
    </message>
    <message>
        <source>Another single lift</source>
        <translation>Eine andere einzelne Übung</translation>
    </message>
</context>
<context>
    <name>StayAwake</name>
    <message>
        <source>A coach is at work.</source>
        <translation>Ein Coach ist bei der Arbeit.</translation>
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
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>the last measurement stays</source>
        <translation>die letzte Messung bleibt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>what is keyed waits</source>
        <translation>Ein­getipptes wartet</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1, less: %2</source>
        <translation>%1, weniger: %2</translation>
    </message>
    <message>
        <source>type</source>
        <translation>eingeben</translation>
    </message>
    <message>
        <source>%1: %2, type</source>
        <translation>%1: %2, eingeben</translation>
    </message>
    <message>
        <source>%1, more: %2</source>
        <translation>%1, mehr: %2</translation>
    </message>
</context>
<context>
    <name>StockLine</name>
    <message>
        <source>One pair of %1 less</source>
        <translation>Ein Paar %1 weniger</translation>
    </message>
    <message>
        <source>One pair of %1 more</source>
        <translation>Ein Paar %1 mehr</translation>
    </message>
</context>
<context>
    <name>StoppedPage</name>
    <message>
        <source>Vault</source>
        <translation>Tresor</translation>
    </message>
    <message>
        <source>TRY AGAIN</source>
        <translation>NOCH EINMAL</translation>
    </message>
    <message>
        <source>Nothing has been changed in the vault.</source>
        <translation>Im Tresor wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Looking for the vault</source>
        <translation>Der Tresor wird gesucht</translation>
    </message>
</context>
<context>
    <name>StrengthPage</name>
    <message>
        <source>strength: one repetition maximum, as a range</source>
        <translation>Kraft: Maximum für eine Wiederholung, als Spanne</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>No test is kept yet. Open a lift and add one: a set of up to 10 reps with what was left in reserve, or a maximum that was tried out.</source>
        <translation>Noch kein Test ist behalten. Öffne eine Übung und füge einen hinzu: einen Satz bis 10 Wiederholungen mit dem, was in Reserve blieb, oder ein ausprobiertes Maximum.</translation>
    </message>
    <message>
        <source>F/M is what was lifted by body mass; F/M^0.67 takes out that bigger people are stronger. Both are for one person over time, and no norm.</source>
        <translation>F/M ist das Gehobene je Körpermasse; F/M^0.67 nimmt heraus, dass größere Menschen stärker sind. Beide gelten für eine Person über die Zeit und sind keine Norm.</translation>
    </message>
    <message>
        <source>The last day with plain iron counts, not the best. Limits take the low end of the range, percentages its middle.</source>
        <translation>Es gilt der letzte Tag mit bloßem Eisen, nicht der beste. Grenzen nehmen das untere Ende der Spanne, Prozente ihre Mitte.</translation>
    </message>
</context>
<context>
    <name>StrengthView</name>
    <message>
        <source>no maximum</source>
        <translation>kein Maximum</translation>
    </message>
    <message>
        <source>nothing follows from its tests</source>
        <translation>aus den Tests folgt nichts</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>tested</source>
        <translation>getestet</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>older than your limit: test again</source>
        <translation>älter als deine Grenze: neu testen</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>mit: %1</translation>
    </message>
    <message>
        <source>her body is in it</source>
        <translation>ihr Körper zählt mit</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht getestet</translation>
    </message>
</context>
<context>
    <name>SurfaceEditor</name>
    <message>
        <source>How it slides: not known yet</source>
        <translation>Wie er gleitet: noch nicht bekannt</translation>
    </message>
    <message>
        <source>This sled is not there any more.</source>
        <translation>Diesen Schlitten gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Still to do: say which surface it is.</source>
        <translation>Noch zu tun: sagen, welcher Untergrund es ist.</translation>
    </message>
    <message>
        <source>Still to do: pull it with two different loads, or more.</source>
        <translation>Noch zu tun: mit zwei verschiedenen Lasten oder mehr ziehen.</translation>
    </message>
    <message>
        <source>On the sled, pull %1</source>
        <translation>Auf dem Schlitten, Zug %1</translation>
    </message>
    <message>
        <source>plates on it; 0 with none</source>
        <translation>Scheiben darauf; 0 ohne</translation>
    </message>
    <message>
        <source>The scale shows, pull %1</source>
        <translation>Die Waage zeigt, Zug %1</translation>
    </message>
    <message>
        <source>at a steady walk, once it slides</source>
        <translation>in gleichmäßigem Schritt, sobald er gleitet</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>the least it shows</source>
        <translation>das Kleinste, was sie zeigt</translation>
    </message>
    <message>
        <source>Upper end of the strap</source>
        <translation>Oberes Ende des Gurts</translation>
    </message>
    <message>
        <source>above the ground; leave out when it was pulled level</source>
        <translation>über dem Boden; weglassen, wenn waagrecht gezogen wurde</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>SurfacePage</name>
    <message>
        <source>How it slides</source>
        <translation>Wie er gleitet</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>a steady walk, a scale in the strap</source>
        <translation>in gleichmäßigem Schritt, mit einer Waage im Gurt</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Ground it was pulled on before</source>
        <translation>Untergrund, auf dem er schon gezogen wurde</translation>
    </message>
    <message>
        <source>Ground, as wet grass</source>
        <translation>Untergrund, etwa nasses Gras</translation>
    </message>
</context>
<context>
    <name>TakeOutPage</name>
    <message>
        <source>Take out %1?</source>
        <translation>%1 heraus­nehmen?</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Athletin</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 heraus­nehmen</translation>
    </message>
    <message>
        <source>The squad shows this person no more, with bar marks and set-ups. What was entered stays in the vault&apos;s journal: this is no erasure.</source>
        <translation>Der Kader zeigt diese Person mit Stangen­marken und Aufbauten nicht mehr. Was eingetragen wurde, bleibt im Journal des Tresors: Das ist keine Löschung.</translation>
    </message>
    <message>
        <source>You can undo it until the vault is locked.</source>
        <translation>Du kannst es rückgängig machen, bis der Tresor gesperrt wird.</translation>
    </message>
</context>
<context>
    <name>TestEditor</name>
    <message>
        <source>The load comes first.</source>
        <translation>Zuerst die Last.</translation>
    </message>
    <message>
        <source>Her body mass comes first: it is lifted too.</source>
        <translation>Zuerst ihre Körpermasse: Sie wird mitgehoben.</translation>
    </message>
    <message>
        <source>Count the reps that were done.</source>
        <translation>Zähle die geschafften Wiederholungen.</translation>
    </message>
    <message>
        <source>No rep done and none missed is no test.</source>
        <translation>Keine geschafft und keine verfehlt ist kein Test.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Her 1RM: %1</source>
        <translation>Ihr 1RM: %1</translation>
    </message>
    <message>
        <source>middle %1, tested</source>
        <translation>Mitte %1, getestet</translation>
    </message>
    <message>
        <source>middle %1, estimated by seven formulas</source>
        <translation>Mitte %1, mit sieben Formeln geschätzt</translation>
    </message>
    <message>
        <source>%1; with nothing said of the reserve it is taken for none</source>
        <translation>%1; ohne Angabe zur Reserve wird keine angenommen</translation>
    </message>
    <message>
        <source>No maximum follows: %1</source>
        <translation>Daraus folgt kein Maximum: %1</translation>
    </message>
    <message>
        <source>%1 It can be kept, and counts for nothing.</source>
        <translation>%1 Es lässt sich behalten und zählt für nichts.</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Taken off her</source>
        <translation>Ihr abgenommen</translation>
    </message>
    <message>
        <source>Hung on her</source>
        <translation>An sie gehängt</translation>
    </message>
    <message>
        <source>0 where nothing is</source>
        <translation>0, wo nichts ist</translation>
    </message>
    <message>
        <source>bar, collars and plates</source>
        <translation>Stange, Verschlüsse und Scheiben</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>as measured last</source>
        <translation>wie zuletzt gemessen</translation>
    </message>
    <message>
        <source>Smallest jump</source>
        <translation>Kleinster Sprung</translation>
    </message>
    <message>
        <source>from one load that was tried to the next; %1 where nobody noted it</source>
        <translation>von einer versuchten Last zur nächsten; %1, wo es niemand notiert hat</translation>
    </message>
    <message>
        <source>There is no such number.</source>
        <translation>So eine Zahl gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>TestPage</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>A test</source>
        <translation>Ein Test</translation>
    </message>
    <message>
        <source>%1 · not kept yet</source>
        <translation>%1 · noch nicht behalten</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Heraus­nehmen</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>a set</source>
        <translation>ein Satz</translation>
    </message>
    <message>
        <source>a maximum tried out</source>
        <translation>ein ausprobiertes Maximum</translation>
    </message>
    <message>
        <source>What it was</source>
        <translation>Was es war</translation>
    </message>
    <message>
        <source>hangs on her</source>
        <translation>hängt an ihr</translation>
    </message>
    <message>
        <source>helps her</source>
        <translation>hilft ihr</translation>
    </message>
    <message>
        <source>The load</source>
        <translation>Die Last</translation>
    </message>
    <message>
        <source>Reps done</source>
        <translation>Geschaffte Wieder­holungen</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Reps left in reserve, as she says</source>
        <translation>Wiederholungen in Reserve, wie sie sagt</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>one was missed</source>
        <translation>eine verfehlt</translation>
    </message>
    <message>
        <source>A rep missed behind them</source>
        <translation>Danach eine verfehlt</translation>
    </message>
    <message>
        <source>In a kept set-up</source>
        <translation>In einem behaltenen Aufbau</translation>
    </message>
    <message>
        <source>Hung besides iron</source>
        <translation>Außer Eisen hing</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>another day</source>
        <translation>ein anderer Tag</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>A maximal test is not for everybody</source>
        <translation>Ein Maximaltest ist nicht für alle</translation>
    </message>
    <message>
        <source>Warm, screened and cleared for it; supervised, with safeties and spotters. Stop for pain, dizziness, chest pain, sudden headache or numbness. A set with reps in reserve says nearly as much. Your local rules come first.</source>
        <translation>Aufgewärmt, untersucht und dafür freigegeben; beaufsichtigt, mit Sicherungen und Helfern. Aufhören bei Schmerz, Schwindel, Brustschmerz, plötzlichem Kopfschmerz oder Taubheit. Ein Satz mit Wiederholungen in Reserve sagt fast ebenso viel. Die Regeln vor Ort gehen vor.</translation>
    </message>
    <message>
        <source>May be under age</source>
        <translation>Vielleicht minderjährig</translation>
    </message>
    <message>
        <source>Technique before load, qualified supervision, and no maximal lift without an approval by name.</source>
        <translation>Technik vor Last, qualifizierte Aufsicht und kein maximaler Versuch ohne namentliche Erlaubnis.</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
</context>
<context>
    <name>TestRows</name>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>berichtigen</translation>
    </message>
</context>
<context>
    <name>ThingRow</name>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Measure %1</source>
        <translation>%1 messen</translation>
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
        <translation>Material hier</translation>
    </message>
    <message>
        <source>Tap what to hang</source>
        <translation>Tippe an, was hängen soll</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Measure new kit</source>
        <translation>Neues Material messen</translation>
    </message>
    <message>
        <source>No kit is measured yet. A chain takes a minute: weigh it, or gauge one link. A band takes four: hang plates on it and read its length.</source>
        <translation>Noch ist kein Material gemessen. Eine Kette dauert eine Minute: Wieg sie oder miss ein Glied aus. Ein Band dauert vier: Häng Scheiben daran und lies die Länge ab.</translation>
    </message>
    <message>
        <source>Take along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>kit of another venue, for now</source>
        <translation>Material eines anderen Orts, vorerst</translation>
    </message>
    <message>
        <source>Copy a list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>names only, to be measured</source>
        <translation>nur Namen, noch zu messen</translation>
    </message>
    <message>
        <source>Add a venue</source>
        <translation>Ort hinzufügen</translation>
    </message>
    <message>
        <source>Just arrived</source>
        <translation>Gerade angekommen</translation>
    </message>
    <message>
        <source>tyres, logs, kegs, sleds, handles: one after the other</source>
        <translation>Reifen, Stämme, Fässer, Schlitten, Griffe: eins nach dem anderen</translation>
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
        <translation>gewählt</translation>
    </message>
</context>
<context>
    <name>ToolEditor</name>
    <message>
        <source>Still to do: read it with a known mass on it.</source>
        <translation>Noch zu tun: mit einer bekannten Masse daran ablesen.</translation>
    </message>
</context>
<context>
    <name>ToolGuide</name>
    <message>
        <source>step 1</source>
        <translation>Schritt 1</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
</context>
<context>
    <name>ToolPage</name>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>not kept yet</source>
        <translation>noch nicht behalten</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Name, if you give it one</source>
        <translation>Name, wenn du einen gibst</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
    <message>
        <source>two alike</source>
        <translation>zwei gleiche</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
</context>
<context>
    <name>ToolStepsPage</name>
    <message>
        <source>Begin</source>
        <translation>Los</translation>
    </message>
</context>
<context>
    <name>UndoKey</name>
    <message>
        <source>Undo:</source>
        <translation>Rückgängig:</translation>
    </message>
</context>
<context>
    <name>UnlockPage</name>
    <message>
        <source>Unlock</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>with the recovery code</source>
        <translation>mit dem Rettungs­code</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Mit dieser Passphrase öffnen</translation>
    </message>
    <message>
        <source>Use the passphrase</source>
        <translation>Passphrase nehmen</translation>
    </message>
    <message>
        <source>Use the recovery code</source>
        <translation>Rettungs­code nehmen</translation>
    </message>
    <message>
        <source>UNLOCK</source>
        <translation>ÖFFNEN</translation>
    </message>
    <message>
        <source>This is a season of Marrow Hill, an invented club. Its passphrase is no secret: %1</source>
        <translation>Das ist eine Saison von Marrow Hill, einem erfundenen Verein. Die Passphrase ist kein Geheimnis: %1</translation>
    </message>
    <message>
        <source>Recovery code</source>
        <translation>Rettungs­code</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>five groups, from your paper</source>
        <translation>fünf Gruppen, von deinem Papier</translation>
    </message>
    <message>
        <source>five words with spaces, or your own</source>
        <translation>fünf Wörter mit Leerzeichen, oder deine eigene</translation>
    </message>
</context>
<context>
    <name>UsePage</name>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>DO NOT USE</source>
        <translation>NICHT BENUTZEN</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>BEREIT</translation>
    </message>
    <message>
        <source>NOT READY: look over first</source>
        <translation>NICHT BEREIT: zuerst durchsehen</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Held against</source>
        <translation>Gemessen an</translation>
    </message>
    <message>
        <source>the most that she may have in her hands</source>
        <translation>das Meiste, was sie in den Händen haben darf</translation>
    </message>
    <message>
        <source>How it slides, and her runs</source>
        <translation>Wie er gleitet, und ihre Läufe</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Wie es gemessen wurde</translation>
    </message>
    <message>
        <source>Stop for pain, dizziness, chest pain, sudden headache or numbness. Local rules, and whoever is licensed or responsible here, go before this page.</source>
        <translation>Schluss bei Schmerz, Schwindel, Brust­schmerz, plötzlichem Kopf­schmerz oder Taubheit. Örtliche Regeln und wer hier dazu befugt oder verantwortlich ist, gehen dieser Seite vor.</translation>
    </message>
</context>
<context>
    <name>UseView</name>
    <message>
        <source>Read its diameter and width, and what a flip takes is known.</source>
        <translation>Durchmesser und Breite ablesen, dann ist bekannt, was ein Wenden braucht.</translation>
    </message>
    <message>
        <source>Off the ground its edge takes %1 N straight up, most of the whole flip; at %2° it stands by itself.</source>
        <translation>Vom Boden weg braucht sein Rand %1 N senkrecht nach oben, das meiste beim ganzen Wenden; bei %2° steht er von selbst.</translation>
    </message>
    <message>
        <source>%1 That is %2 % of her lowest deadlift, give-or-take counted in.</source>
        <translation>%1 Das sind %2 % der niedrigsten Schätzung ihres Kreuzhebens, das Mehr oder Weniger mitgezählt.</translation>
    </message>
    <message>
        <source>%1 % of her %2</source>
        <translation>%1 % ihres Maximums: %2</translation>
    </message>
    <message>
        <source>no lift</source>
        <translation>keiner Übung</translation>
    </message>
    <message>
        <source>Nobody knows whether she may</source>
        <translation>Niemand weiß, ob sie darf</translation>
    </message>
    <message>
        <source>In her hands at once: %1.</source>
        <translation>Auf einmal in ihren Händen: %1.</translation>
    </message>
    <message>
        <source>%1 % of her body mass.</source>
        <translation>%1 % ihrer Körpermasse.</translation>
    </message>
    <message>
        <source>%1 % of her lowest deadlift.</source>
        <translation>%1 % der niedrigsten Schätzung ihres Kreuzhebens.</translation>
    </message>
    <message>
        <source>One lap of the lane: %1 kg·m, which are no tonnage.</source>
        <translation>Eine Runde der Bahn: %1 kg·m, die keine Tonnage sind.</translation>
    </message>
    <message>
        <source>Plates on each handle</source>
        <translation>Scheiben an jedem Griff</translation>
    </message>
    <message>
        <source>Plates on it</source>
        <translation>Scheiben daran</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Gestellt auf</translation>
    </message>
    <message>
        <source>%1°, edge at %2: %3 N</source>
        <translation>%1°, Kante auf %2: %3 N</translation>
    </message>
</context>
<context>
    <name>VaultMaker</name>
    <message>
        <source>Five of %1 words, drawn by this device: 1 in 2 to the power of %2.</source>
        <translation>Fünf von %1 Wörtern, von diesem Gerät gezogen: 1 zu 2 hoch %2.</translation>
    </message>
    <message>
        <source>Those are not the five words above. One space stands between two words.</source>
        <translation>Das sind nicht die fünf Wörter von oben. Zwischen zwei Wörtern steht ein Leerzeichen.</translation>
    </message>
    <message numerus="yes">
        <source>At least %n characters: there are %1.</source>
        <translation>
            <numerusform>Mindestens %n Zeichen: Es sind %1.</numerusform>
            <numerusform>Mindestens %n Zeichen: Es sind %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The two are not the same. Hold Show to see them.</source>
        <translation>Die beiden sind nicht gleich. Halte „Zeigen“ gedrückt, um sie zu sehen.</translation>
    </message>
    <message>
        <source>That is another recovery code. Type the one that was shown.</source>
        <translation>Das ist ein anderer Rettungs­code. Gib den ein, der gezeigt wurde.</translation>
    </message>
</context>
<context>
    <name>VenuePage</name>
    <message>
        <source>Add a venue</source>
        <translation>Ort hinzufügen</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>KEEP</source>
        <translation>BEHALTEN</translation>
    </message>
    <message>
        <source>Name of the place</source>
        <translation>Name des Orts</translation>
    </message>
    <message>
        <source>what is measured there is listed under it</source>
        <translation>was dort gemessen wird, steht darunter</translation>
    </message>
</context>
<context>
    <name>WantedPlaces</name>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
</context>
<context>
    <name>WeighedHere</name>
    <message>
        <source>The bar weighs</source>
        <translation>Die Stange wiegt</translation>
    </message>
    <message>
        <source>as weighed</source>
        <translation>wie gewogen</translation>
    </message>
    <message>
        <source>as marked</source>
        <translation>laut Aufschrift</translation>
    </message>
    <message>
        <source>Tap weighed plates to load with what they weigh, or with their mark again. Chalk it on them.</source>
        <translation>Tippe gewogene Scheiben an, um nach ihrem Gewicht aufzulegen, oder wieder nach ihrer Aufschrift. Schreib es mit Kreide darauf.</translation>
    </message>
</context>
<context>
    <name>WeighedIronView</name>
    <message>
        <source>Plates that are not here</source>
        <translation>Scheiben, die nicht hier sind</translation>
    </message>
    <message>
        <source>%1, weighed %2</source>
        <translation>%1, gewogen %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>as keyed</source>
        <translation>wie eingetippt</translation>
    </message>
    <message>
        <source>each %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>not here, or not to be used: tap to load by the mark again</source>
        <translation>nicht hier oder nicht zu benutzen: antippen, um wieder nach Aufschrift aufzulegen</translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Make your vault</source>
        <translation>Leg deinen Tresor an</translation>
    </message>
    <message>
        <source>once, on this device</source>
        <translation>einmal, auf diesem Gerät</translation>
    </message>
    <message>
        <source>FIVE WORDS</source>
        <translation>FÜNF WÖRTER</translation>
    </message>
    <message>
        <source>drawn for me</source>
        <translation>für mich gezogen</translation>
    </message>
    <message>
        <source>A passphrase of my own</source>
        <translation>Eine eigene Passphrase</translation>
    </message>
    <message>
        <source>Everything about your athletes goes into a vault on this device. Nobody reads it without the passphrase: no thief, no finder, nobody at a repair shop.</source>
        <translation>Alles über deine Athletinnen kommt in einen Tresor auf diesem Gerät. Ohne die Passphrase liest es niemand: kein Dieb, kein Finder, niemand in einer Werkstatt.</translation>
    </message>
    <message>
        <source>A recovery code opens it should you forget the passphrase. Without both, nobody can open it, and that includes us.</source>
        <translation>Ein Rettungs­code öffnet ihn, falls du die Passphrase vergisst. Ohne beides kann ihn niemand öffnen, auch wir nicht.</translation>
    </message>
    <message>
        <source>You need paper, a pen and two minutes.</source>
        <translation>Du brauchst Papier, einen Stift und zwei Minuten.</translation>
    </message>
</context>
<context>
    <name>WhatToHangPage</name>
    <message>
        <source>What do I hang?</source>
        <translation>Was hänge ich an?</translation>
    </message>
    <message>
        <source>both sides alike, from what is here and free</source>
        <translation>beide Seiten gleich, aus dem, was hier und frei ist</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation>Suche anhalten</translation>
    </message>
    <message>
        <source>HANG THIS</source>
        <translation>DAS ANHÄNGEN</translation>
    </message>
    <message>
        <source>Chains</source>
        <translation>Ketten</translation>
    </message>
    <message>
        <source>may hang</source>
        <translation>dürfen dran</translation>
    </message>
    <message>
        <source>stay off</source>
        <translation>bleiben weg</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>Say what the pull should be, at one place or at several.</source>
        <translation>Sag, wie groß der Zug sein soll, an einer Stelle oder an mehreren.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>as a load</source>
        <translation>als Last</translation>
    </message>
    <message>
        <source>in % of a 1RM</source>
        <translation>in % eines 1RM</translation>
    </message>
    <message>
        <source>1RM</source>
        <translation>1RM</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>Level with her strength</source>
        <translation>Gleichmäßig zu ihrer Kraft</translation>
    </message>
    <message>
        <source>no matter</source>
        <translation>egal</translation>
    </message>
    <message>
        <source>as level as it goes</source>
        <translation>so gleichmäßig es geht</translation>
    </message>
    <message>
        <source>What she can hold</source>
        <translation>Was sie halten kann</translation>
    </message>
    <message>
        <source>isometric pulls at three heights at least</source>
        <translation>isometrische Züge an mindestens drei Höhen</translation>
    </message>
    <message>
        <source>typed for now, not tested</source>
        <translation>vorläufig, nicht geprüft</translation>
    </message>
</context>
<context>
    <name>WhenHolds</name>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
</context>
<context>
    <name>WhoSays</name>
    <message>
        <source>named before</source>
        <translation>schon genannt</translation>
    </message>
</context>
<context>
    <name>Working</name>
    <message>
        <source>One moment: the key is being made. It takes a second or two on purpose, so that guessing costs as much each time.</source>
        <translation>Einen Moment: Der Schlüssel wird erzeugt. Das dauert mit Absicht ein, zwei Sekunden, damit Raten jedes Mal genauso viel kostet.</translation>
    </message>
</context>
<context>
    <name>askingtexts</name>
    <message>
        <source>lent, or out of use</source>
        <translation>verliehen oder außer Gebrauch</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <translation>noch nicht gemessen</translation>
    </message>
    <message>
        <source>only one: both sides hang alike</source>
        <translation>nur einmal da: beide Seiten hängen gleich</translation>
    </message>
    <message>
        <source>no place to anchor it: measure the rack&apos;s</source>
        <translation>kein Platz, es zu verankern: die des Racks messen</translation>
    </message>
    <message>
        <source>not measured as far as it would be stretched</source>
        <translation>nicht so weit gemessen, wie es gedehnt würde</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1: takes off %2 at the bottom and %3 at the top.</source>
        <translation>%1: nimmt unten %2 ab und oben %3.</translation>
    </message>
    <message>
        <source>%1: gives the rise, %2 from bottom to top.</source>
        <translation>%1: gibt den Anstieg, %2 von unten nach oben.</translation>
    </message>
    <message>
        <source>%1: %2 of the rise.</source>
        <translation>%1: %2 vom Anstieg.</translation>
    </message>
    <message>
        <source>%1: %2 all the way.</source>
        <translation>%1: %2 auf dem ganzen Weg.</translation>
    </message>
    <message>
        <source>%1 instead would do as well, a little less near.</source>
        <translation>%1 stattdessen ginge auch, ein wenig weniger genau.</translation>
    </message>
    <message>
        <source>With %1 besides it would do as well, a little less near.</source>
        <translation>Mit %1 dazu ginge es auch, ein wenig weniger genau.</translation>
    </message>
    <message>
        <source>%1 instead would be %2 too little %3.</source>
        <translation>%1 stattdessen wären %2 zu wenig %3.</translation>
    </message>
    <message>
        <source>With %1 it would be %2 too little %3.</source>
        <translation>Mit %1 wären es %2 zu wenig %3.</translation>
    </message>
    <message>
        <source>%1 instead would overshoot by %2 %3.</source>
        <translation>%1 stattdessen wären %2 zu viel %3.</translation>
    </message>
    <message>
        <source>With %1 it would overshoot by %2 %3.</source>
        <translation>Mit %1 wären es %2 zu viel %3.</translation>
    </message>
    <message>
        <source>At the bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>In the sticking zone</source>
        <translation>In der Sticking-Zone</translation>
    </message>
    <message>
        <source>At the top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Mean of the path</source>
        <translation>Mittel über den Weg</translation>
    </message>
    <message>
        <source>at the bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>in the sticking zone</source>
        <translation>in der Sticking-Zone</translation>
    </message>
    <message>
        <source>at the top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>on the mean</source>
        <translation>im Mittel</translation>
    </message>
    <message>
        <source>Isometric pulls along more of her path come first</source>
        <translation>Zuerst isometrische Züge über mehr von ihrem Weg</translation>
    </message>
    <message>
        <source>Her bar marks come first</source>
        <translation>Zuerst ihre Stangen­marken</translation>
    </message>
    <message>
        <source>The plates come first</source>
        <translation>Zuerst die Scheiben</translation>
    </message>
    <message>
        <source>It cannot be asked yet</source>
        <translation>Das lässt sich noch nicht fragen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not among the choices: %1.</source>
        <translation>Nicht zur Wahl: %1.</translation>
    </message>
    <message>
        <source>%1: just that</source>
        <translation>%1: genau so viel</translation>
    </message>
    <message>
        <source>%1: %2 less</source>
        <translation>%1: %2 weniger</translation>
    </message>
    <message>
        <source>%1: %2 more</source>
        <translation>%1: %2 mehr</translation>
    </message>
    <message>
        <source>her share varies by %1 %</source>
        <translation>ihr Anteil schwankt um %1 %</translation>
    </message>
    <message>
        <source>take off: %1</source>
        <translation>abnehmen: %1</translation>
    </message>
    <message>
        <source>hang: %1</source>
        <translation>anhängen: %1</translation>
    </message>
    <message>
        <source>hang another way: %1</source>
        <translation>anders anhängen: %1</translation>
    </message>
    <message>
        <source>Iron alone comes nearest.</source>
        <translation>Eisen allein kommt am nächsten.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message numerus="yes">
        <source>%Ln pulls</source>
        <translation>
            <numerusform>%Ln Zug</numerusform>
            <numerusform>%Ln Züge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln heights</source>
        <translation>
            <numerusform>%Ln Höhe</numerusform>
            <numerusform>%Ln Höhen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>She pulls %1 % of what she can hold, from %2 to %3. That share varies by %4 %; with plain iron by %5 %.</source>
        <translation>Sie zieht %1 % von dem, was sie halten kann, von %2 bis %3. Der Anteil schwankt um %4 %; mit bloßem Eisen um %5 %.</translation>
    </message>
    <message>
        <source>Stopped: something better may exist.</source>
        <translation>Angehalten: Es mag etwas Besseres geben.</translation>
    </message>
    <message>
        <source>Not proved: something better may exist, but nothing comes nearer than %1.</source>
        <translation>Nicht bewiesen: Es mag etwas Besseres geben, aber nichts kommt näher als %1.</translation>
    </message>
</context>
<context>
    <name>contestedtexts</name>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>A venue</source>
        <translation>Ein Ort</translation>
    </message>
    <message>
        <source>A thing of the kit</source>
        <translation>Ein Stück Material</translation>
    </message>
    <message>
        <source>A lift</source>
        <translation>Eine Übung</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>squad</source>
        <translation>Kader</translation>
    </message>
    <message>
        <source>birth year</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>guardian&apos;s agreement</source>
        <translation>Ein­willigung der Eltern</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>bar marks for the %1</source>
        <translation>Stangen­marken für %1</translation>
    </message>
    <message>
        <source>something a newer app keeps</source>
        <translation>etwas, das eine neuere App behält</translation>
    </message>
    <message>
        <source>one or a pair</source>
        <translation>einzeln oder ein Paar</translation>
    </message>
    <message>
        <source>where it belongs</source>
        <translation>wohin es gehört</translation>
    </message>
    <message>
        <source>fit or out of use</source>
        <translation>in Ordnung oder gesperrt</translation>
    </message>
    <message>
        <source>borrowed or not</source>
        <translation>geliehen oder nicht</translation>
    </message>
    <message>
        <source>lent or not</source>
        <translation>verliehen oder nicht</translation>
    </message>
    <message>
        <source>where it is for now</source>
        <translation>wo es vorerst ist</translation>
    </message>
    <message>
        <source>the lift</source>
        <translation>die Übung</translation>
    </message>
    <message>
        <source>what hangs</source>
        <translation>was hängt</translation>
    </message>
    <message>
        <source>which lift it is like</source>
        <translation>welcher Übung sie ähnelt</translation>
    </message>
    <message>
        <source>where it starts</source>
        <translation>wo sie beginnt</translation>
    </message>
    <message>
        <source>of mass</source>
        <translation>für Masse</translation>
    </message>
    <message>
        <source>of length</source>
        <translation>für Länge</translation>
    </message>
    <message>
        <source>taken out or not</source>
        <translation>heraus­genommen oder nicht</translation>
    </message>
    <message>
        <source>body mass and height</source>
        <translation>Körpermasse und Größe</translation>
    </message>
    <message>
        <source>a measurement</source>
        <translation>eine Messung</translation>
    </message>
    <message>
        <source>something a newer app wrote</source>
        <translation>etwas, das eine neuere App geschrieben hat</translation>
    </message>
    <message>
        <source>bottom %1</source>
        <translation>unten %1</translation>
    </message>
    <message>
        <source>sticking from %1</source>
        <translation>Sticking ab %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>oben %1</translation>
    </message>
    <message>
        <source>rack %1</source>
        <translation>Rack %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>%1, iron alone</source>
        <translation>%1, nur Eisen</translation>
    </message>
    <message>
        <source>%1 and %2 hung</source>
        <translation>%1 und %2 angehängt</translation>
    </message>
    <message>
        <source>with plates on the floor</source>
        <translation>mit den Scheiben am Boden</translation>
    </message>
    <message>
        <source>from her own bottom</source>
        <translation>an ihrem tiefsten Punkt</translation>
    </message>
    <message>
        <source>a pair</source>
        <translation>ein Paar</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>a venue taken out</source>
        <translation>ein heraus­genommener Ort</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund (lb)</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>a unit of a newer app</source>
        <translation>eine Einheit einer neueren App</translation>
    </message>
    <message>
        <source>left empty</source>
        <translation>leer gelassen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>heraus­genommen</translation>
    </message>
    <message>
        <source>still there</source>
        <translation>noch da</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Your limits</source>
        <translation>Deine Grenzen</translation>
    </message>
    <message>
        <source>clearance taken back or not</source>
        <translation>Freigabe zurück­genommen oder nicht</translation>
    </message>
    <message>
        <source>day status lifted or not</source>
        <translation>Tages­status aufgehoben oder nicht</translation>
    </message>
    <message>
        <source>a test of strength</source>
        <translation>ein Krafttest</translation>
    </message>
    <message>
        <source>a clearance</source>
        <translation>eine Freigabe</translation>
    </message>
    <message>
        <source>day status</source>
        <translation>Tages­status</translation>
    </message>
    <message>
        <source>an isometric pull</source>
        <translation>ein isometrischer Zug</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1, %2-mal</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>as it was shipped: %1</source>
        <translation>wie aus­geliefert: %1</translation>
    </message>
    <message>
        <source>what makes the way down heavier</source>
        <translation>was den Weg nach unten schwerer macht</translation>
    </message>
    <message>
        <source>A surface</source>
        <translation>Ein Untergrund</translation>
    </message>
    <message>
        <source>what loads of the %1 are held against</source>
        <translation>woran Lasten beim %1 gemessen werden</translation>
    </message>
    <message>
        <source>length of the lane</source>
        <translation>Länge der Bahn</translation>
    </message>
    <message>
        <source>how a sled slides</source>
        <translation>wie ein Schlitten gleitet</translation>
    </message>
    <message>
        <source>a timed run with a sled</source>
        <translation>ein gestoppter Lauf mit einem Schlitten</translation>
    </message>
    <message>
        <source>%1 % of the %2</source>
        <translation>%1 % von %2</translation>
    </message>
    <message>
        <source>%1, pulled with %2 loads</source>
        <translation>%1, mit %2 Lasten gezogen</translation>
    </message>
    <message>
        <source>%1 on the sled over %2 in %3 s</source>
        <translation>%1 auf dem Schlitten über %2 in %3 s</translation>
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
        <translation>bloßes Eisen</translation>
    </message>
    <message>
        <source>maximal test</source>
        <translation>Maximaltest</translation>
    </message>
    <message>
        <source>eccentric overload</source>
        <translation>exzentrische Überlast</translation>
    </message>
    <message>
        <source>chains</source>
        <translation>Ketten</translation>
    </message>
    <message>
        <source>bands from below</source>
        <translation>Bänder von unten</translation>
    </message>
    <message>
        <source>bands from above</source>
        <translation>Bänder von oben</translation>
    </message>
    <message>
        <source>bench aid</source>
        <translation>Bankhilfe</translation>
    </message>
    <message>
        <source>machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>über Kopf</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>log, keg, sandbag, stone</source>
        <translation>Stamm, Fass, Sandsack, Stein</translation>
    </message>
    <message>
        <source>carries</source>
        <translation>Tragen</translation>
    </message>
    <message>
        <source>sled</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <source>kettlebells</source>
        <translation>Kugelhanteln</translation>
    </message>
    <message>
        <source>isometric test</source>
        <translation>isometrischer Test</translation>
    </message>
    <message>
        <source>jumps and landings</source>
        <translation>Sprünge und Landungen</translation>
    </message>
    <message>
        <source>throws</source>
        <translation>Würfe</translation>
    </message>
    <message>
        <source>something a newer app knows</source>
        <translation>etwas, das eine neuere App kennt</translation>
    </message>
    <message>
        <source>squats</source>
        <translation>Kniebeugen</translation>
    </message>
    <message>
        <source>lifts bent at the hip</source>
        <translation>Übungen aus der Hüftbeuge</translation>
    </message>
    <message>
        <source>presses</source>
        <translation>Drücken</translation>
    </message>
    <message>
        <source>arm pulls</source>
        <translation>Ziehen mit den Armen</translation>
    </message>
    <message>
        <source>explosive lifts</source>
        <translation>explosive Übungen</translation>
    </message>
    <message>
        <source>one-leg lifts</source>
        <translation>Übungen auf einem Bein</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>some</source>
        <translation>manches</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Nobody knows whether she may</source>
        <translation>Niemand weiß, ob sie darf</translation>
    </message>
    <message>
        <source>For nobody: no clearance is looked at.</source>
        <translation>Für niemanden: Keine Freigabe wird geprüft.</translation>
    </message>
    <message>
        <source>Nothing in her day status, clearances, age and maximum stands against it.</source>
        <translation>Nichts in Tages­status, Freigaben, Alter und Maximum spricht dagegen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Before it is ready: %1</source>
        <translation>Bevor es bereit ist: %1</translation>
    </message>
    <message>
        <source>A proven overhead lift comes first.</source>
        <translation>Zuerst kommt eine sichere Übung über Kopf.</translation>
    </message>
    <message>
        <source>Room above and around; nobody within reach of the bar.</source>
        <translation>Platz darüber und rundum; niemand in Reichweite der Stange.</translation>
    </message>
    <message>
        <source>She knows how to get out from under it.</source>
        <translation>Sie weiß, wie sie darunter wegkommt.</translation>
    </message>
    <message>
        <source>Warm, screened and supervised.</source>
        <translation>Warm, untersucht und beaufsichtigt.</translation>
    </message>
    <message>
        <source>Safeties set, a spotter at each end.</source>
        <translation>Sicherheits­ablagen gesetzt, an jedem Ende ein Helfer.</translation>
    </message>
    <message>
        <source>Stop for pain, dizziness, chest pain, sudden headache or numbness.</source>
        <translation>Schluss bei Schmerz, Schwindel, Brust­schmerz, plötzlichem Kopf­schmerz oder Taubheit.</translation>
    </message>
    <message>
        <source>She breathes, and builds up the pull.</source>
        <translation>Sie atmet und baut den Zug auf.</translation>
    </message>
    <message>
        <source>Rehearse with empty hooks, a spotter at each end.</source>
        <translation>Mit leeren Haken üben, an jedem Ende ein Helfer.</translation>
    </message>
    <message>
        <source>If one side stays on: do not press, ride to the safeties.</source>
        <translation>Bleibt eine Seite hängen: nicht drücken, auf die Sicherheits­ablagen absenken.</translation>
    </message>
    <message>
        <source>Safeties tried with an empty bar.</source>
        <translation>Sicherheits­ablagen mit leerer Stange probiert.</translation>
    </message>
    <message>
        <source>Flat back to the ground, no curled arms.</source>
        <translation>Flacher Rücken bis zum Boden, Arme nicht angewinkelt.</translation>
    </message>
    <message>
        <source>Look for wire; drain it.</source>
        <translation>Nach Draht suchen; leeren.</translation>
    </message>
    <message>
        <source>Clear fall zone, spotters.</source>
        <translation>Freie Fallzone, Helfer.</translation>
    </message>
    <message>
        <source>A keg under pressure is never opened or dropped.</source>
        <translation>Ein Fass unter Druck wird nie geöffnet oder fallen gelassen.</translation>
    </message>
    <message>
        <source>Clear room to let it fall.</source>
        <translation>Freier Platz, um es fallen zu lassen.</translation>
    </message>
    <message>
        <source>Feet clear of it.</source>
        <translation>Füße weg davon.</translation>
    </message>
    <message>
        <source>Clear lane, level ground.</source>
        <translation>Freie Bahn, ebener Boden.</translation>
    </message>
    <message>
        <source>Stop when posture goes.</source>
        <translation>Aufhören, wenn die Haltung nachlässt.</translation>
    </message>
    <message>
        <source>Look at the kit and the place first.</source>
        <translation>Sieh dir zuerst Material und Ort an.</translation>
    </message>
</context>
<context>
    <name>gatetexts::Saying</name>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>%1 set it on %2, until %3.</source>
        <translation>%1 hat es am %2 gesetzt, bis %3.</translation>
    </message>
    <message>
        <source>%1 set it on %2.</source>
        <translation>%1 hat es am %2 gesetzt.</translation>
    </message>
    <message>
        <source>“%1” %2</source>
        <translation>„%1“ %2</translation>
    </message>
    <message>
        <source>deadlift</source>
        <translation>das Kreuzheben</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>die Übung</translation>
    </message>
    <message>
        <source>May be under age: %1</source>
        <translation>Vielleicht minder­jährig: %1</translation>
    </message>
    <message>
        <source>A clearance for it with this lift, given knowing her age, settles it. Local rules go before.</source>
        <translation>Eine Freigabe dafür mit dieser Übung, im Wissen um ihr Alter, klärt es. Örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>Age not known: %1</source>
        <translation>Alter nicht bekannt: %1</translation>
    </message>
    <message>
        <source>Enter her birth year; or a clearance for it with this lift, given knowing that she may be under age, settles it.</source>
        <translation>Trag ihr Geburtsjahr ein; oder eine Freigabe dafür mit dieser Übung klärt es, erteilt im Wissen, dass sie vielleicht minderjährig ist.</translation>
    </message>
    <message>
        <source>Nobody knows whether the load keeps to the limit</source>
        <translation>Niemand weiß, ob die Last die Grenze einhält</translation>
    </message>
    <message>
        <source>Measure what hangs along her whole way, then it is known.</source>
        <translation>Miss, was hängt, über ihren ganzen Weg, dann ist es bekannt.</translation>
    </message>
    <message>
        <source>Clearance is given by whoever is licensed or responsible here.</source>
        <translation>Freigaben erteilt, wer hier dazu befugt oder verantwortlich ist.</translation>
    </message>
    <message>
        <source>Clearance is over: %1</source>
        <translation>Freigabe abgelaufen: %1</translation>
    </message>
    <message>
        <source>%1 gave it, until %2.</source>
        <translation>%1 hat sie erteilt, bis %2.</translation>
    </message>
    <message>
        <source>Clearance was taken back: %1</source>
        <translation>Freigabe zurück­genommen: %1</translation>
    </message>
    <message>
        <source>%1 took it back on %2.</source>
        <translation>%1 hat sie am %2 zurück­genommen.</translation>
    </message>
    <message>
        <source>Cleared only from %2 on: %1</source>
        <translation>Erst ab %2 freigegeben: %1</translation>
    </message>
    <message>
        <source>%1 gave it. Wait until then, or have it put right.</source>
        <translation>%1 hat sie erteilt. Warte bis dahin, oder lass sie berichtigen.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>Nicht freigegeben: %1</translation>
    </message>
    <message>
        <source>Nobody has cleared her for it with this lift.</source>
        <translation>Niemand hat sie mit dieser Übung dafür freigegeben.</translation>
    </message>
    <message>
        <source>Whoever set it lifts it.</source>
        <translation>Wer es gesetzt hat, hebt es auf.</translation>
    </message>
    <message>
        <source>She does not train now</source>
        <translation>Sie trainiert jetzt nicht</translation>
    </message>
    <message>
        <source>this lift</source>
        <translation>diese Übung</translation>
    </message>
    <message>
        <source>Not now: %1</source>
        <translation>Jetzt nicht: %1</translation>
    </message>
    <message>
        <source>It may be one of what she is kept from now</source>
        <translation>Es gehört vielleicht zu dem, was sie jetzt nicht darf</translation>
    </message>
    <message>
        <source>Nobody has said which lift this one is like. Say so where the lift was added, then it is known.</source>
        <translation>Niemand hat gesagt, welcher Übung diese gleicht. Sag es dort, wo die Übung hinzugefügt wurde, dann ist es bekannt.</translation>
    </message>
    <message>
        <source>Something is said of her now</source>
        <translation>Über sie ist jetzt etwas gesagt</translation>
    </message>
    <message>
        <source>A newer app has set what she may do now</source>
        <translation>Eine neuere App hat gesetzt, was sie jetzt darf</translation>
    </message>
    <message>
        <source>What it forbids cannot be read here. Update the app, or ask whoever set it.</source>
        <translation>Was das verbietet, ist hier nicht zu lesen. Aktualisiere die App, oder frag, wer es gesetzt hat.</translation>
    </message>
    <message>
        <source>Her maximum was not lifted with plain iron</source>
        <translation>Ihr Maximum wurde nicht mit bloßem Eisen gehoben</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate the plain %2: it says how steady she is.</source>
        <translation>Es ist vom %1. Teste oder schätze %2 mit bloßem Eisen: Das sagt, wie sicher sie ist.</translation>
    </message>
    <message>
        <source>Her maximum is too old to go by</source>
        <translation>Ihr Maximum ist zu alt, um danach zu gehen</translation>
    </message>
    <message>
        <source>It is of %1 and counted until %2. Test or estimate the plain %3 again.</source>
        <translation>Es ist vom %1 und zählte bis %2. Teste oder schätze %3 mit bloßem Eisen neu.</translation>
    </message>
    <message>
        <source>No maximum of hers is known</source>
        <translation>Kein Maximum von ihr ist bekannt</translation>
    </message>
    <message>
        <source>Test or estimate the plain %1 first: percent is of that, and it says how steady she is.</source>
        <translation>Teste oder schätze zuerst %1 mit bloßem Eisen: Davon sind die Prozente, und es sagt, wie sicher sie ist.</translation>
    </message>
    <message>
        <source>tested on %1</source>
        <translation>getestet am %1</translation>
    </message>
    <message>
        <source>estimated from %1</source>
        <translation>geschätzt aus dem %1</translation>
    </message>
    <message>
        <source>%1 at the worst place would do.</source>
        <translation>%1 an der schlimmsten Stelle ginge.</translation>
    </message>
    <message>
        <source>No load would do.</source>
        <translation>Keine Last ginge.</translation>
    </message>
    <message>
        <source>Over the limit of %1 of her maximum</source>
        <translation>Über der Grenze von %1 ihres Maximums</translation>
    </message>
    <message>
        <source>At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2).</source>
        <translation>An der schlimmsten Stelle, das Mehr oder Weniger mitgezählt, sind es %1 der niedrigsten Schätzung (%2).</translation>
    </message>
    <message>
        <source>As much as her maximum, or more</source>
        <translation>So viel wie ihr Maximum oder mehr</translation>
    </message>
    <message>
        <source>At its worst place, give-or-take counted in, it comes to %1 of the lowest estimate (%2): a maximal lift. Warm, screened, supervised.</source>
        <translation>An der schlimmsten Stelle, das Mehr oder Weniger mitgezählt, sind es %1 der niedrigsten Schätzung (%2): eine maximale Last. Warm, untersucht, beaufsichtigt.</translation>
    </message>
</context>
<context>
    <name>implementform</name>
    <message>
        <source>Water in it</source>
        <translation>Wasser darin</translation>
    </message>
    <message>
        <source>drained, none left</source>
        <translation>ausgeleert, nichts mehr darin</translation>
    </message>
    <message>
        <source>not looked yet</source>
        <translation>noch nicht nachgesehen</translation>
    </message>
    <message>
        <source>The tape was laid</source>
        <translation>Das Maßband lag</translation>
    </message>
    <message>
        <source>across its ends</source>
        <translation>quer über die Enden</translation>
    </message>
    <message>
        <source>round it</source>
        <translation>rundherum</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>spruce, fir, pine</source>
        <translation>Fichte, Tanne, Kiefer</translation>
    </message>
    <message>
        <source>oak, beech, ash</source>
        <translation>Eiche, Buche, Esche</translation>
    </message>
    <message>
        <source>It has lain</source>
        <translation>Gelagert</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>drinnen</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>unter Dach</translation>
    </message>
    <message>
        <source>across it</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Besteht aus</translation>
    </message>
    <message>
        <source>granite</source>
        <translation>Granit</translation>
    </message>
    <message>
        <source>limestone</source>
        <translation>Kalkstein</translation>
    </message>
    <message>
        <source>sandstone</source>
        <translation>Sandstein</translation>
    </message>
    <message>
        <source>concrete</source>
        <translation>Beton</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es ist</translation>
    </message>
    <message>
        <source>a keg</source>
        <translation>ein Fass</translation>
    </message>
    <message>
        <source>a sandbag</source>
        <translation>ein Sandsack</translation>
    </message>
    <message>
        <source>Filled with</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>dry sand</source>
        <translation>trockener Sand</translation>
    </message>
    <message>
        <source>wet sand</source>
        <translation>nasser Sand</translation>
    </message>
    <message>
        <source>lead shot</source>
        <translation>Bleischrot</translation>
    </message>
    <message>
        <source>rubber crumb</source>
        <translation>Gummi­granulat</translation>
    </message>
    <message>
        <source>Gas in it</source>
        <translation>Gas darin</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>niemand weiß es</translation>
    </message>
    <message>
        <source>it holds gas</source>
        <translation>es hält Gas</translation>
    </message>
    <message>
        <source>let off by whoever may</source>
        <translation>abgelassen von jemandem, der darf</translation>
    </message>
    <message>
        <source>a pair of handles</source>
        <translation>ein Paar Griffe</translation>
    </message>
    <message>
        <source>one handle</source>
        <translation>ein Griff</translation>
    </message>
    <message>
        <source>a hex bar</source>
        <translation>eine Hex-Bar</translation>
    </message>
    <message>
        <source>a yoke</source>
        <translation>ein Joch</translation>
    </message>
    <message>
        <source>a frame</source>
        <translation>ein Rahmen</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht probiert</translation>
    </message>
    <message>
        <source>it fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>it does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>a kettlebell</source>
        <translation>eine Kettlebell</translation>
    </message>
    <message>
        <source>a dumbbell</source>
        <translation>eine Kurzhantel</translation>
    </message>
    <message>
        <source>Tried with one hand</source>
        <translation>Mit einer Hand probiert</translation>
    </message>
    <message>
        <source>Tried with two, little fingers on the horns</source>
        <translation>Mit zwei probiert, kleine Finger an den Hörnern</translation>
    </message>
    <message>
        <source>with nothing else on it</source>
        <translation>mit nichts anderem daran</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Aufschrift</translation>
    </message>
    <message>
        <source>counts where nobody has weighed it, 2 % either way</source>
        <translation>gilt, wo niemand es gewogen hat, 2 % in beide Richtungen</translation>
    </message>
    <message>
        <source>The figure on it. Weighing it is surer.</source>
        <translation>Die Zahl darauf. Wiegen ist sicherer.</translation>
    </message>
    <message>
        <source>Only where the hook held further in than it rests.</source>
        <translation>Nur wo der Haken weiter innen hielt, als es aufliegt.</translation>
    </message>
    <message>
        <source>One end</source>
        <translation>Ein Ende</translation>
    </message>
    <message>
        <source>just off the ground</source>
        <translation>knapp über dem Boden</translation>
    </message>
    <message>
        <source>Lift one end a hand&apos;s breadth by the scale, the rope upright, the other end on the ground.</source>
        <translation>Ein Ende an der Waage eine Handbreit anheben, das Seil senkrecht, das andere Ende am Boden.</translation>
    </message>
    <message>
        <source>The other end</source>
        <translation>Das andere Ende</translation>
    </message>
    <message>
        <source>Then the other end likewise. The two add up, however the mass lies along it.</source>
        <translation>Dann das andere Ende genauso. Beide zusammen­gezählt stimmen, wie auch immer die Masse der Länge nach liegt.</translation>
    </message>
    <message>
        <source>From rest to rest</source>
        <translation>Von Auflage zu Auflage</translation>
    </message>
    <message>
        <source>only where the hook held further in</source>
        <translation>nur wo der Haken weiter innen hielt</translation>
    </message>
    <message>
        <source>Hook further in, one end</source>
        <translation>Haken weiter innen, ein Ende</translation>
    </message>
    <message>
        <source>from where it rests</source>
        <translation>ab der Auflage</translation>
    </message>
    <message>
        <source>Hook further in, other end</source>
        <translation>Haken weiter innen, anderes Ende</translation>
    </message>
    <message>
        <source>The scale reads</source>
        <translation>Die Waage zeigt</translation>
    </message>
    <message>
        <source>Edge %1 reads</source>
        <translation>Rand %1 zeigt</translation>
    </message>
    <message>
        <source>one edge just off the ground</source>
        <translation>ein Rand knapp über dem Boden</translation>
    </message>
    <message>
        <source>Hook under one edge, lift it a finger&apos;s breadth, the rope upright. Feet and hands clear.</source>
        <translation>Haken unter einen Rand, ihn eine Fingerbreite anheben, das Seil senkrecht. Füße und Hände weg.</translation>
    </message>
    <message>
        <source>Middle to hook</source>
        <translation>Mitte bis Haken</translation>
    </message>
    <message>
        <source>Middle to hook, edge %1</source>
        <translation>Mitte bis Haken, Rand %1</translation>
    </message>
    <message>
        <source>level, from the middle of the tyre</source>
        <translation>waagerecht, von der Mitte des Reifens</translation>
    </message>
    <message>
        <source>From the middle of the tyre to where the hook holds, level.</source>
        <translation>Von der Mitte des Reifens bis dahin, wo der Haken hält, waagerecht.</translation>
    </message>
    <message>
        <source>Middle to far ring</source>
        <translation>Mitte bis ferner Ring</translation>
    </message>
    <message>
        <source>Middle to far ring, edge %1</source>
        <translation>Mitte bis ferner Ring, Rand %1</translation>
    </message>
    <message>
        <source>the ring that it lies on, far side</source>
        <translation>der Ring, auf dem er liegt, ferne Seite</translation>
    </message>
    <message>
        <source>From the middle to the far side of the ring that it lies on: narrower than the tyre itself.</source>
        <translation>Von der Mitte bis zur fernen Seite des Rings, auf dem er liegt: schmaler als der Reifen selbst.</translation>
    </message>
    <message>
        <source>Hung whole, clear of the ground, nobody under it. Never more than scale and hook are made for.</source>
        <translation>Ganz gehängt, frei vom Boden, niemand darunter. Nie mehr, als wofür Waage und Haken gemacht sind.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>for the force of a flip</source>
        <translation>für die Kraft beim Wenden</translation>
    </message>
    <message>
        <source>Across the whole tyre.</source>
        <translation>Quer über den ganzen Reifen.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>how high it lies</source>
        <translation>wie hoch er liegt</translation>
    </message>
    <message>
        <source>From the ground to its upper side.</source>
        <translation>Vom Boden bis zu seiner Oberseite.</translation>
    </message>
    <message>
        <source>Round one end</source>
        <translation>Umfang, ein Ende</translation>
    </message>
    <message>
        <source>Across one end</source>
        <translation>Durchmesser, ein Ende</translation>
    </message>
    <message>
        <source>Round the other end</source>
        <translation>Umfang, anderes Ende</translation>
    </message>
    <message>
        <source>Across the other end</source>
        <translation>Durchmesser, anderes Ende</translation>
    </message>
    <message>
        <source>A tape laid round it, without bark if it comes off.</source>
        <translation>Das Maßband rundherum gelegt, ohne Rinde, wenn sie abgeht.</translation>
    </message>
    <message>
        <source>Mean of two ways across, without bark if it comes off.</source>
        <translation>Mittel aus zwei Richtungen quer, ohne Rinde, wenn sie abgeht.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>of the wood</source>
        <translation>des Holzes</translation>
    </message>
    <message>
        <source>From end to end.</source>
        <translation>Von Ende zu Ende.</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Rohdichte­zahl</translation>
    </message>
    <message>
        <source>of the wood; spruce 0.40, oak 0.60</source>
        <translation>des Holzes; Fichte 0,40, Eiche 0,60</translation>
    </message>
    <message>
        <source>Dry mass over its volume as it is now; pieces of one species differ by a tenth.</source>
        <translation>Trockenmasse durch sein jetziges Volumen; Stücke einer Art unterscheiden sich um ein Zehntel.</translation>
    </message>
    <message>
        <source>× water</source>
        <translation>× Wasser</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>in per cent of its dry mass</source>
        <translation>in Prozent seiner Trockenmasse</translation>
    </message>
    <message>
        <source>12 indoors, 18 under a roof. Wet or fresh wood: weigh it by both ends instead.</source>
        <translation>12 drinnen, 18 unter Dach. Nasses oder frisches Holz: lieber an beiden Enden wiegen.</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Hung level, clear of the ground.</source>
        <translation>Waagerecht gehängt, frei vom Boden.</translation>
    </message>
    <message>
        <source>Round it</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>where it is widest</source>
        <translation>wo er am breitesten ist</translation>
    </message>
    <message>
        <source>Mean of three ways. A centimetre in thirty is a tenth of its mass.</source>
        <translation>Mittel aus drei Richtungen. Ein Zentimeter auf dreißig ist ein Zehntel seiner Masse.</translation>
    </message>
    <message>
        <source>In a sling, or stood on a scale.</source>
        <translation>In einer Schlinge, oder auf eine Waage gestellt.</translation>
    </message>
    <message>
        <source>As it will be lifted, with what is in it.</source>
        <translation>So, wie es gehoben wird, mit dem, was darin ist.</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>weighed with nothing in it</source>
        <translation>gewogen mit nichts darin</translation>
    </message>
    <message>
        <source>The bag alone.</source>
        <translation>Der Sack allein.</translation>
    </message>
    <message>
        <source>Weigh an empty one of the same make: kegs differ.</source>
        <translation>Ein leeres der gleichen Bauart wiegen: Fässer sind verschieden.</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Darin</translation>
    </message>
    <message>
        <source>litres, as poured</source>
        <translation>Liter, wie eingefüllt</translation>
    </message>
    <message>
        <source>Count the cans or jugs that go in, or pour it out into them.</source>
        <translation>Zähl die Kanister oder Krüge, die hineingehen, oder gieß es in sie aus.</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>How deep</source>
        <translation>Füllhöhe</translation>
    </message>
    <message>
        <source>standing upright</source>
        <translation>aufrecht stehend</translation>
    </message>
    <message>
        <source>Dip a stick down to the bottom and read how far it is wet.</source>
        <translation>Einen Stab bis zum Grund eintauchen und ablesen, wie weit er nass ist.</translation>
    </message>
    <message>
        <source>Across, inside</source>
        <translation>Durchmesser innen</translation>
    </message>
    <message>
        <source>Outside less twice the wall.</source>
        <translation>Außen minus zweimal die Wand.</translation>
    </message>
    <message>
        <source>lying, in the middle</source>
        <translation>liegend, in der Mitte</translation>
    </message>
    <message>
        <source>Lying, a third of the depth is not a third of what is in it: that is worked out.</source>
        <translation>Liegend ist ein Drittel der Höhe nicht ein Drittel des Inhalts: Das wird ausgerechnet.</translation>
    </message>
    <message>
        <source>Length, inside</source>
        <translation>Länge innen</translation>
    </message>
    <message>
        <source>From end to end inside. Where its litres are printed on it, give them instead.</source>
        <translation>Innen von Ende zu Ende. Wo die Liter darauf stehen, lieber diese angeben.</translation>
    </message>
    <message>
        <source>Holds, full</source>
        <translation>Fasst, voll</translation>
    </message>
    <message>
        <source>litres, as printed on it</source>
        <translation>Liter, wie darauf steht</translation>
    </message>
    <message>
        <source>As printed on it: then no length is needed.</source>
        <translation>Wie es darauf steht: Dann braucht es keine Länge.</translation>
    </message>
    <message>
        <source>The sled alone, with its strap.</source>
        <translation>Der Schlitten allein, mit seinem Gurt.</translation>
    </message>
    <message>
        <source>Strap</source>
        <translation>Gurt</translation>
    </message>
    <message>
        <source>hook to belt</source>
        <translation>Haken bis Gürtel</translation>
    </message>
    <message>
        <source>Pulled straight, from the sled&apos;s hook to her belt.</source>
        <translation>Gerade gezogen, vom Haken des Schlittens bis zu ihrem Gürtel.</translation>
    </message>
    <message>
        <source>Its hook</source>
        <translation>Sein Haken</translation>
    </message>
    <message>
        <source>above the ground</source>
        <translation>über dem Boden</translation>
    </message>
    <message>
        <source>With her belt&apos;s height it says how steep the strap pulls.</source>
        <translation>Mit der Höhe ihres Gürtels sagt es, wie steil der Gurt zieht.</translation>
    </message>
    <message>
        <source>One of them reads</source>
        <translation>Einer davon zeigt</translation>
    </message>
    <message>
        <source>One handle with nothing on it; the other is taken for its like.</source>
        <translation>Ein Griff ohne etwas daran; der andere gilt als gleich.</translation>
    </message>
    <message>
        <source>With nothing on it.</source>
        <translation>Ohne etwas daran.</translation>
    </message>
    <message>
        <source>Many are off their mark by more than a plate would be.</source>
        <translation>Viele liegen weiter neben ihrer Aufschrift als eine Scheibe.</translation>
    </message>
    <message>
        <source>Can be set to</source>
        <translation>Einstellbar auf</translation>
    </message>
    <message>
        <source>and to</source>
        <translation>und auf</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Eingestellt auf</translation>
    </message>
    <message>
        <source>only of one with changeable masses</source>
        <translation>nur bei verstellbarer Masse</translation>
    </message>
    <message>
        <source>as marked, 2 % either way</source>
        <translation>laut Aufschrift, 2 % in beide Richtungen</translation>
    </message>
    <message>
        <source>Each mass that it can be set to, as it is marked.</source>
        <translation>Jede Masse, auf die sie sich einstellen lässt, laut Aufschrift.</translation>
    </message>
    <message>
        <source>Handle, thick</source>
        <translation>Griff, Dicke</translation>
    </message>
    <message>
        <source>for whoever chooses</source>
        <translation>hilft beim Auswählen</translation>
    </message>
    <message>
        <source>Across the handle where the hand holds it.</source>
        <translation>Quer über den Griff, wo die Hand ihn hält.</translation>
    </message>
    <message>
        <source>Window, wide</source>
        <translation>Fenster, Breite</translation>
    </message>
    <message>
        <source>from horn to horn</source>
        <translation>von Horn zu Horn</translation>
    </message>
    <message>
        <source>Inside, from horn to horn.</source>
        <translation>Innen, von Horn zu Horn.</translation>
    </message>
    <message>
        <source>The opposite edge too</source>
        <translation>Auch der Rand gegenüber</translation>
    </message>
    <message>
        <source>whole, on a scale</source>
        <translation>ganz, an einer Waage</translation>
    </message>
    <message>
        <source>by litres</source>
        <translation>nach Litern</translation>
    </message>
    <message>
        <source>by its level, standing</source>
        <translation>nach Füllhöhe, stehend</translation>
    </message>
    <message>
        <source>by its level, lying</source>
        <translation>nach Füllhöhe, liegend</translation>
    </message>
    <message>
        <source>surest</source>
        <translation>am sichersten</translation>
    </message>
    <message>
        <source>what was poured in</source>
        <translation>was eingefüllt wurde</translation>
    </message>
    <message>
        <source>a stick and a tape</source>
        <translation>Stab und Maßband</translation>
    </message>
    <message>
        <source>on the list, and given to nobody</source>
        <translation>auf der Liste, für niemanden</translation>
    </message>
    <message>
        <source>Measure a tyre</source>
        <translation>Reifen messen</translation>
    </message>
    <message>
        <source>Look for wire that shows and drain it first: water is weighed too, and runs. Clear the ground it could fall on. Twice what an edge reads is too little, the unsafe side: the lever says the rest.</source>
        <translation>Zuerst nach Draht suchen, der zu sehen ist, und ausleeren: Wasser wird mitgewogen und läuft. Den Boden räumen, auf den er fallen könnte. Das Doppelte dessen, was ein Rand zeigt, ist zu wenig, die unsichere Seite: Den Rest sagt der Hebel.</translation>
    </message>
    <message>
        <source>one edge lifted</source>
        <translation>ein Rand angehoben</translation>
    </message>
    <message>
        <source>a hanging scale and a tape</source>
        <translation>Hängewaage und Maßband</translation>
    </message>
    <message>
        <source>Measure a log</source>
        <translation>Stamm messen</translation>
    </message>
    <message>
        <source>Each end on a scale, one after the other, is surer than size and wood. Look for splits and loose handles; feet clear of it.</source>
        <translation>Jedes Ende an einer Waage, eines nach dem anderen, ist sicherer als Maß und Holz. Nach Spalten und losen Griffen suchen; Füße weg davon.</translation>
    </message>
    <message>
        <source>each end on a scale</source>
        <translation>jedes Ende an einer Waage</translation>
    </message>
    <message>
        <source>by size and wood</source>
        <translation>nach Maß und Holz</translation>
    </message>
    <message>
        <source>however its mass lies</source>
        <translation>wie auch immer seine Masse liegt</translation>
    </message>
    <message>
        <source>a tape, and what wood it is</source>
        <translation>Maßband, und welches Holz es ist</translation>
    </message>
    <message>
        <source>Measure a stone</source>
        <translation>Stein messen</translation>
    </message>
    <message>
        <source>On a scale where one holds it. By its size a centimetre in thirty is a tenth of its mass.</source>
        <translation>An eine Waage, wo eine ihn trägt. Nach Maß ist ein Zentimeter auf dreißig ein Zehntel seiner Masse.</translation>
    </message>
    <message>
        <source>by its size</source>
        <translation>nach Maß</translation>
    </message>
    <message>
        <source>a tape, and what it is made of</source>
        <translation>Maßband, und woraus er ist</translation>
    </message>
    <message>
        <source>Measure a keg or sandbag</source>
        <translation>Fass oder Sandsack messen</translation>
    </message>
    <message>
        <source>Never open or drop a keg that may hold gas: whoever owns it lets it off. One of which nobody knows is not used.</source>
        <translation>Ein Fass, das vielleicht Gas hält, nie öffnen oder fallen lassen: Es lässt ab, wem es gehört. Eines, von dem es niemand weiß, wird nicht benutzt.</translation>
    </message>
    <message>
        <source>Measure a sled</source>
        <translation>Schlitten messen</translation>
    </message>
    <message>
        <source>What it weighs, and how its strap pulls. How it slides is measured on the spot, on each surface.</source>
        <translation>Was er wiegt, und wie sein Gurt zieht. Wie er gleitet, wird an Ort und Stelle gemessen, auf jedem Untergrund.</translation>
    </message>
    <message>
        <source>Measure what is carried by</source>
        <translation>Griffe, Joch oder Rahmen messen</translation>
    </message>
    <message>
        <source>Handles, a yoke or a bar weigh something themselves, and it is carried too. Look at welds and collars.</source>
        <translation>Griffe, ein Joch oder eine Stange wiegen selbst etwas, und das wird mitgetragen. Schweiß­nähte und Verschlüsse ansehen.</translation>
    </message>
    <message>
        <source>Measure a kettlebell or dumbbell</source>
        <translation>Kettlebell oder Kurzhantel messen</translation>
    </message>
    <message>
        <source>The right mass can be the wrong thing in the hand: whether it sits is tried, not worked out.</source>
        <translation>Die richtige Masse kann in der Hand das Falsche sein: Ob es sitzt, wird probiert, nicht ausgerechnet.</translation>
    </message>
    <message>
        <source>Warn of, in words</source>
        <translation>Warnen vor, in Worten</translation>
    </message>
    <message>
        <source>Its mass</source>
        <translation>Seine Masse</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
</context>
<context>
    <name>implementtexts</name>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>a mass anywhere within a step shows the same: step / √12</source>
        <translation>innerhalb eines Teil­schritts zeigt jede Masse dasselbe: Teilschritt / √12</translation>
    </message>
    <message>
        <source>The scale&apos;s own error</source>
        <translation>Eigener Fehler der Waage</translation>
    </message>
    <message>
        <source>as far as it was off when it was checked, either way: error / √3</source>
        <translation>so weit, wie sie bei der Prüfung danebenlag, in beide Richtungen: Fehler / √3</translation>
    </message>
    <message>
        <source>Mark on it</source>
        <translation>Aufschrift</translation>
    </message>
    <message>
        <source>up to 2 % out, either way, until it is weighed (our choice)</source>
        <translation>bis zu 2 % daneben, in beide Richtungen, bis es gewogen ist (unsere Wahl)</translation>
    </message>
    <message>
        <source>Lift point</source>
        <translation>Hebepunkt</translation>
    </message>
    <message>
        <source>from the middle to the hook, read to a centimetre (our choice)</source>
        <translation>von der Mitte bis zum Haken, auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Far contact</source>
        <translation>Ferner Auflagepunkt</translation>
    </message>
    <message>
        <source>from the middle to the far side of the ring it rests on, read to a centimetre (our choice)</source>
        <translation>von der Mitte bis zur fernen Seite des Rings, auf dem er liegt, auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Where it rests and where the hook holds</source>
        <translation>Wo es aufliegt und wo der Haken hält</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice)</source>
        <translation>auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>tape read to a centimetre (our choice)</source>
        <translation>Maßband auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Specific gravity of the wood</source>
        <translation>Rohdichte­zahl des Holzes</translation>
    </message>
    <message>
        <source>pieces of one species differ by 10 % (Wood Handbook, FPL-GTR-190, from memory)</source>
        <translation>Stücke einer Art unterscheiden sich um 10 % (Wood Handbook, FPL-GTR-190, aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Moisture of the wood</source>
        <translation>Feuchte des Holzes</translation>
    </message>
    <message>
        <source>known to 3 % of its dry mass (our choice)</source>
        <translation>auf 3 % seiner Trockenmasse bekannt (unsere Wahl)</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>anywhere between the two ends of its range</source>
        <translation>irgendwo zwischen den beiden Enden ihres Bereichs</translation>
    </message>
    <message>
        <source>Litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>up to 2 % out, either way (our choice)</source>
        <translation>bis zu 2 % daneben, in beide Richtungen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Depth of the filling</source>
        <translation>Höhe der Füllung</translation>
    </message>
    <message>
        <source>a tyre</source>
        <translation>ein Reifen</translation>
    </message>
    <message>
        <source>a log</source>
        <translation>ein Stamm</translation>
    </message>
    <message>
        <source>a stone</source>
        <translation>ein Stein</translation>
    </message>
    <message>
        <source>a keg or sandbag</source>
        <translation>ein Fass oder Sandsack</translation>
    </message>
    <message>
        <source>a sled</source>
        <translation>ein Schlitten</translation>
    </message>
    <message>
        <source>handles, a yoke or a frame</source>
        <translation>Griffe, ein Joch oder ein Rahmen</translation>
    </message>
    <message>
        <source>a kettlebell or dumbbell</source>
        <translation>eine Kettlebell oder Kurzhantel</translation>
    </message>
    <message>
        <source>Not measured yet.</source>
        <translation>Noch nicht gemessen.</translation>
    </message>
    <message>
        <source>Nobody knows what it weighs: weigh it before anybody lifts it.</source>
        <translation>Niemand weiß, was es wiegt: wiegen, bevor jemand es hebt.</translation>
    </message>
    <message>
        <source>Water in it is weighed too, and runs: drain it, then weigh it.</source>
        <translation>Wasser darin wird mitgewogen und läuft: erst ausleeren, dann wiegen.</translation>
    </message>
    <message>
        <source>What the scale shows is wanting: read it.</source>
        <translation>Es fehlt, was die Waage zeigt: ablesen.</translation>
    </message>
    <message>
        <source>The step of the scale is wanting: say it.</source>
        <translation>Es fehlt der Teilschritt der Waage: angeben.</translation>
    </message>
    <message>
        <source>Where it was lifted or where it rests is wanting: read both from the middle.</source>
        <translation>Es fehlt, wo gehoben wurde oder wo es aufliegt: beides von der Mitte aus ablesen.</translation>
    </message>
    <message>
        <source>A size is wanting: read it with a tape.</source>
        <translation>Es fehlt ein Maß: mit dem Maßband ablesen.</translation>
    </message>
    <message>
        <source>The wood is wanting: say its specific gravity and how moist it is.</source>
        <translation>Es fehlt das Holz: Rohdichtezahl und Feuchte angeben.</translation>
    </message>
    <message>
        <source>What it is made of is wanting: say its density, or weigh it.</source>
        <translation>Es fehlt, woraus es ist: Dichte angeben oder wiegen.</translation>
    </message>
    <message>
        <source>What is in it is wanting: say it, or weigh all of it.</source>
        <translation>Es fehlt, was darin ist: angeben oder alles wiegen.</translation>
    </message>
    <message>
        <source>What it weighs empty is wanting: weigh an empty one, or weigh all of it.</source>
        <translation>Es fehlt, was es leer wiegt: ein leeres wiegen oder alles wiegen.</translation>
    </message>
    <message>
        <source>How much is in it is wanting: say how many litres or how deep, or weigh all of it.</source>
        <translation>Es fehlt, wie viel darin ist: Liter oder Höhe angeben oder alles wiegen.</translation>
    </message>
    <message>
        <source>Its numbers cannot be right: look at them again.</source>
        <translation>Seine Zahlen können nicht stimmen: noch einmal ansehen.</translation>
    </message>
    <message>
        <source>%1 each, by the mark</source>
        <translation>je %1, nach der Aufschrift</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>%1 to %2, by the mark</source>
        <translation>%1 bis %2, nach der Aufschrift</translation>
    </message>
    <message>
        <source>%1, by the mark</source>
        <translation>%1, nach der Aufschrift</translation>
    </message>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % von dem, was es unsicher macht</translation>
    </message>
    <message>
        <source>What is marked on it; nobody has weighed it.</source>
        <translation>Was darauf steht; niemand hat es gewogen.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Was es wiegt.</translation>
    </message>
    <message>
        <source>What one end weighs and what the other weighs, added up; a hook further in counts by its lever.</source>
        <translation>Was das eine Ende wiegt und was das andere wiegt, zusammen­gezählt; ein Haken weiter innen zählt nach seinem Hebel.</translation>
    </message>
    <message>
        <source>Its volume as a cone cut off at both ends, times the density of its wood when so moist.</source>
        <translation>Sein Volumen als Kegelstumpf, mal der Dichte seines Holzes bei dieser Feuchte.</translation>
    </message>
    <message>
        <source>What one edge weighs, times the whole lever from the far contact to the hook, divided by the lever to the middle. Of two edges the mean.</source>
        <translation>Was ein Rand wiegt, mal dem ganzen Hebel vom fernen Auflagepunkt bis zum Haken, geteilt durch den Hebel bis zur Mitte. Von zwei Rändern das Mittel.</translation>
    </message>
    <message>
        <source>Its volume as a ball, times its density.</source>
        <translation>Sein Volumen als Kugel, mal seiner Dichte.</translation>
    </message>
    <message>
        <source>What it weighs empty, and how much is in it times its density.</source>
        <translation>Was es leer wiegt, und wie viel darin ist, mal der Dichte davon.</translation>
    </message>
    <message>
        <source>Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Teilschritt einer Waage: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Density of wood: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, chapter 4.</source>
        <translation>Dichte von Holz: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, Kapitel 4.</translation>
    </message>
    <message>
        <source>Levers: statics. Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Hebel: Statik. Teilschritt einer Waage: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Volumes: geometry. Ranges: JCGM 100:2008, 4.3.7.</source>
        <translation>Volumen: Geometrie. Bereiche: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Sandbag</source>
        <translation>Sandsack</translation>
    </message>
    <message>
        <source>Keg</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>Dumbbell</source>
        <translation>Kurzhantel</translation>
    </message>
    <message>
        <source>Kettlebell</source>
        <translation>Kettlebell</translation>
    </message>
    <message>
        <source>Handles</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Hex bar</source>
        <translation>Hex-Bar</translation>
    </message>
    <message>
        <source>Yoke</source>
        <translation>Joch</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>Stein</translation>
    </message>
    <message>
        <source>Sled</source>
        <translation>Schlitten</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>mass not known</source>
        <translation>Masse nicht bekannt</translation>
    </message>
</context>
<context>
    <name>itemorigintexts</name>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n Ablesung</numerusform>
            <numerusform>%n Ablesungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>taken as it was read</source>
        <translation>übernommen wie abgelesen</translation>
    </message>
    <message>
        <source>%1 more changes nothing to speak of</source>
        <translation>%1 mehr ändert nichts Nennens­wertes</translation>
    </message>
    <message>
        <source>%1 more makes it %2 % less</source>
        <translation>%1 mehr ergibt %2 % weniger</translation>
    </message>
    <message>
        <source>%1 more makes it %2 % more</source>
        <translation>%1 mehr ergibt %2 % mehr</translation>
    </message>
    <message>
        <source>%1 % of what makes it uncertain</source>
        <translation>%1 % von dem, was sie unsicher macht</translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>a mass anywhere within a step shows the same: step / √12</source>
        <translation>innerhalb eines Teil­schritts zeigt jede Masse dasselbe: Teilschritt / √12</translation>
    </message>
    <message>
        <source>The scale&apos;s own error</source>
        <translation>Eigener Fehler der Waage</translation>
    </message>
    <message>
        <source>as far as it was off when it was checked, either way: error / √3</source>
        <translation>so weit, wie sie bei der Prüfung danebenlag, in beide Richtungen: Fehler / √3</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>all of it, on the scale</source>
        <translation>die ganze Kette, an der Waage</translation>
    </message>
    <message>
        <source>as sure as the scale</source>
        <translation>so sicher wie die Waage</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Drahtdicke</translation>
    </message>
    <message>
        <source>its real thickness</source>
        <translation>die wirkliche Dicke</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>inside length of one link</source>
        <translation>innere Länge eines Glieds</translation>
    </message>
    <message>
        <source>Inner width</source>
        <translation>Innere Breite</translation>
    </message>
    <message>
        <source>inside width of one link</source>
        <translation>innere Breite eines Glieds</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>first link to last, pulled straight</source>
        <translation>erstes bis letztes Glied, gerade gezogen</translation>
    </message>
    <message>
        <source>says how much of it there is, not what a length of it weighs</source>
        <translation>sagt, wie viel davon da ist, nicht das Gewicht je Länge</translation>
    </message>
    <message>
        <source>Gauging itself</source>
        <translation>Das Ausmessen selbst</translation>
    </message>
    <message>
        <source>what tables print differs by as much from this formula</source>
        <translation>um so viel weichen gedruckte Tabellen von dieser Formel ab</translation>
    </message>
    <message>
        <source>± 3 %</source>
        <translation>± 3 %</translation>
    </message>
    <message>
        <source>first link to last, pulled straight; taken as it was read</source>
        <translation>erstes bis letztes Glied, gerade gezogen; übernommen wie abgelesen</translation>
    </message>
    <message>
        <source>Known plates hung on it</source>
        <translation>Bekannte Scheiben daran</translation>
    </message>
    <message>
        <source>how far the readings lie off the curve says how sure it is; the plates count as they are marked</source>
        <translation>wie weit die Ablesungen neben der Kurve liegen, sagt, wie sicher sie ist; die Scheiben zählen nach Aufschrift</translation>
    </message>
    <message>
        <source>So few readings</source>
        <translation>So wenige Ablesungen</translation>
    </message>
    <message>
        <source>a curve through a handful looks surer than it is, so so much at least (our choice)</source>
        <translation>eine Kurve durch eine Handvoll wirkt sicherer, als sie ist, daher mindestens so viel (unsere Wahl)</translation>
    </message>
    <message>
        <source>± 5 %</source>
        <translation>± 5 %</translation>
    </message>
    <message>
        <source>Length at rest</source>
        <translation>Ruhelänge</translation>
    </message>
    <message>
        <source>unloaded, laid straight; taken as it was read</source>
        <translation>unbelastet, gerade ausgelegt; übernommen wie abgelesen</translation>
    </message>
    <message>
        <source>Known plates resting on it</source>
        <translation>Bekannte Scheiben darauf</translation>
    </message>
    <message>
        <source>marked and not weighed: 2 % either way (our choice)</source>
        <translation>nach Aufschrift, nicht gewogen: 2 % in beide Richtungen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Height above the chest</source>
        <translation>Höhe über der Brust</translation>
    </message>
    <message>
        <source>the bar stood there to a centimetre (our choice), times how steeply the help falls</source>
        <translation>die Stange stand dort auf einen Zentimeter genau (unsere Wahl), mal Gefälle der Hilfe</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Gewichts­block</translation>
    </message>
    <message>
        <source>by its mark, which nobody weighed: 2 % either way (our choice)</source>
        <translation>nach der Aufschrift, die niemand nachgewogen hat: 2 % in beide Richtungen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Radius there</source>
        <translation>Radius dort</translation>
    </message>
    <message>
        <source>from the axis square to the cable, read to %1 (our choice). %2</source>
        <translation>von der Achse im rechten Winkel zum Seil, auf %1 genau abgelesen (unsere Wahl). %2</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>read to a degree (our choice), times how fast the radius changes there</source>
        <translation>auf ein Grad genau abgelesen (unsere Wahl), mal Änderung des Radius dort</translation>
    </message>
    <message>
        <source>What the scale read</source>
        <translation>Was die Waage zeigte</translation>
    </message>
    <message>
        <source>a pull anywhere within a step of %1 shows the same: step / √12; stack %2</source>
        <translation>innerhalb eines Teil­schritts von %1 zeigt jeder Zug dasselbe: Teilschritt / √12; Gewichts­block %2</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>how far the handle came, to a centimetre (our choice), times how fast the pull changes there</source>
        <translation>wie weit der Griff kam, auf einen Zentimeter genau (unsere Wahl), mal Änderung des Zugs dort</translation>
    </message>
    <message>
        <source>Known mass</source>
        <translation>Bekannte Masse</translation>
    </message>
    <message>
        <source>counts as it is said to be</source>
        <translation>zählt wie angegeben</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Empty it showed</source>
        <translation>Leer zeigte sie</translation>
    </message>
    <message>
        <source>to a step of %1: step / √12</source>
        <translation>auf einen Teilschritt von %1: Teilschritt / √12</translation>
    </message>
    <message>
        <source>With it, it showed</source>
        <translation>Damit zeigte sie</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>An der Waage</translation>
    </message>
    <message>
        <source>all of them together</source>
        <translation>alle zusammen</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles zusammen</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>each counts as a like part of them</source>
        <translation>jede zählt als gleicher Teil davon</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>Mark on it</source>
        <translation>Aufschrift</translation>
    </message>
    <message>
        <source>just what it weighs</source>
        <translation>genau, was sie wiegt</translation>
    </message>
    <message>
        <source>it weighs %1 more</source>
        <translation>sie wiegt %1 mehr</translation>
    </message>
    <message>
        <source>it weighs %1 less</source>
        <translation>sie wiegt %1 weniger</translation>
    </message>
    <message>
        <source>does not count: the scale does</source>
        <translation>zählt nicht: die Waage zählt</translation>
    </message>
    <message>
        <source>from where it holds the bar to where the chain hangs, read to a centimetre (our choice)</source>
        <translation>von da, wo er die Stange hält, bis da, wo die Kette hängt, auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>with its hooks; hangs at every height; taken as it was read</source>
        <translation>mit seinen Haken; hängt in jeder Höhe; übernommen wie abgelesen</translation>
    </message>
    <message>
        <source>was not weighed, and counts as nothing</source>
        <translation>wurde nicht gewogen und zählt als null</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>says nothing of its length</source>
        <translation>sagt nichts über die Länge</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice)</source>
        <translation>auf einen Zentimeter genau abgelesen (unsere Wahl)</translation>
    </message>
    <message>
        <source>Lowest hole</source>
        <translation>Unterstes Loch</translation>
    </message>
    <message>
        <source>from the floor to the middle of a bar that lies there, %1. %2</source>
        <translation>vom Boden bis zur Mitte einer Stange, die dort liegt, %1. %2</translation>
    </message>
    <message>
        <source>From hole to hole</source>
        <translation>Von Loch zu Loch</translation>
    </message>
    <message>
        <source>taken as it was read; best over many holes at once</source>
        <translation>übernommen wie abgelesen; am besten über viele Löcher auf einmal</translation>
    </message>
    <message>
        <source>Anchor</source>
        <translation>Anker</translation>
    </message>
    <message>
        <source>from the floor, %1</source>
        <translation>vom Boden aus, %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 N·m at %2</source>
        <translation>%1 N·m bei %2</translation>
    </message>
    <message>
        <source>%1 too little at %2</source>
        <translation>%1 zu wenig bei %2</translation>
    </message>
    <message>
        <source>%1 too much at %2</source>
        <translation>%1 zu viel bei %2</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>hole %1 at %2</source>
        <translation>Loch %1 bei %2</translation>
    </message>
    <message>
        <source>anchor at %1</source>
        <translation>Anker bei %1</translation>
    </message>
    <message>
        <source>A straight line from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>Eine gerade Linie ab der Ruhelänge, nach kleinsten Quadraten durch das gelegt, was es unter bekannten Scheiben zog.</translation>
    </message>
    <message>
        <source>A bent line from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>Eine gekrümmte Linie ab der Ruhelänge, nach kleinsten Quadraten durch das gelegt, was es unter bekannten Scheiben zog.</translation>
    </message>
    <message>
        <source>The curve of rubber from its length at rest, laid through what it pulled under known plates by least squares.</source>
        <translation>Die Kurve von Gummi ab der Ruhelänge, nach kleinsten Quadraten durch das gelegt, was es unter bekannten Scheiben zog.</translation>
    </message>
    <message>
        <source>The height of the anchor as it was read, from the floor.</source>
        <translation>Die Höhe des Ankers wie abgelesen, vom Boden aus.</translation>
    </message>
    <message>
        <source>The height of its only hole as it was read, from the floor.</source>
        <translation>Die Höhe des einzigen Lochs wie abgelesen, vom Boden aus.</translation>
    </message>
    <message>
        <source>The height of the lowest hole, and from there as many times from hole to hole: %1.</source>
        <translation>Die Höhe des untersten Lochs und von dort so oft von Loch zu Loch: %1.</translation>
    </message>
    <message>
        <source>%1 + %2 × %3 = %4</source>
        <translation>%1 + %2 × %3 = %4</translation>
    </message>
    <message>
        <source>What the steel of one link weighs, by its wire, pitch and inner width, divided by its pitch.</source>
        <translation>Was der Stahl eines Glieds wiegt, nach Drahtdicke, Teilung und innerer Breite, geteilt durch die Teilung.</translation>
    </message>
    <message>
        <source>What it weighs, divided by its length.</source>
        <translation>Was sie wiegt, geteilt durch ihre Länge.</translation>
    </message>
    <message>
        <source>A smooth curve through what it carried, which never rises with height; here where it helps most.</source>
        <translation>Eine glatte Kurve, die mit der Höhe nie steigt, durch das, was die Bankhilfe trug; hier, wo sie am meisten hilft.</translation>
    </message>
    <message>
        <source>What the stack weighs, times the radius of the cam at the angle where it is greatest. Friction is left out.</source>
        <translation>Was der Gewichts­block wiegt, mal Radius der Kurven­scheibe bei dem Winkel, wo er am größten ist. Die Reibung ist weg­gelassen.</translation>
    </message>
    <message>
        <source>A smooth curve through what the scale read along its way; here where it pulls most. Friction is in it, as it was pulled.</source>
        <translation>Eine glatte Kurve durch das, was die Waage auf dem Weg zeigte; hier, wo der Zug am größten ist. Die Reibung steckt darin, so wie gezogen wurde.</translation>
    </message>
    <message>
        <source>What it showed with a known mass, less what it showed empty, less the mass; here where it was furthest off. What is weighed on it counts as up to %1 out.</source>
        <translation>Was sie mit einer bekannten Masse zeigte, minus was sie leer zeigte, minus die Masse; hier, wo sie am weitesten danebenlag. Was damit gewogen wird, gilt als bis zu %1 daneben.</translation>
    </message>
    <message>
        <source>What they weigh together, divided by how many there are.</source>
        <translation>Was sie zusammen wiegen, geteilt durch ihre Anzahl.</translation>
    </message>
    <message>
        <source>What it weighs.</source>
        <translation>Was sie wiegt.</translation>
    </message>
    <message>
        <source>Its length as it was read. A set-up takes it so.</source>
        <translation>Seine Länge wie abgelesen. Ein Aufbau übernimmt sie so.</translation>
    </message>
    <message>
        <source>Step of a scale: JCGM 100:2008, 4.3.7.</source>
        <translation>Teilschritt einer Waage: JCGM 100:2008, 4.3.7.</translation>
    </message>
    <message>
        <source>Density of steel: EN 1991-1-1. Chain tables: DIN 766, DIN 763, EN 818-7.</source>
        <translation>Dichte von Stahl: EN 1991-1-1. Ketten­tabellen: DIN 766, DIN 763, EN 818-7.</translation>
    </message>
    <message>
        <source>Bent line: loop bands, McMaster, Cronin and McGuigan 2010.</source>
        <translation>Gekrümmte Linie: Schlaufen­bänder, McMaster, Cronin und McGuigan 2010.</translation>
    </message>
    <message>
        <source>Curve of rubber: Mooney 1940, Rivlin 1948.</source>
        <translation>Kurve von Gummi: Mooney 1940, Rivlin 1948.</translation>
    </message>
    <message>
        <source>Curve: Fritsch and Butland 1984.</source>
        <translation>Kurve: Fritsch und Butland 1984.</translation>
    </message>
    <message>
        <source>Weight times radius: statics; standard gravity: CGPM 1901.</source>
        <translation>Gewicht mal Radius: Statik; Normfall­beschleunigung: CGPM 1901.</translation>
    </message>
    <message>
        <source>A few more readings would make it surer.</source>
        <translation>Mit ein paar Ablesungen mehr wäre es sicherer.</translation>
    </message>
    <message>
        <source>Plates that were weighed would make it surer.</source>
        <translation>Mit gewogenen Scheiben wäre es sicherer.</translation>
    </message>
    <message>
        <source>Weighing the stack&apos;s plates would make it surer.</source>
        <translation>Mit gewogenem Gewichts­block, Stück für Stück, wäre es sicherer.</translation>
    </message>
    <message>
        <source>Reading the radius finer would make it surer.</source>
        <translation>Mit feiner abgelesenem Radius wäre es sicherer.</translation>
    </message>
    <message>
        <source>A scale with a finer step would make it surer.</source>
        <translation>Mit feinerem Teilschritt der Waage wäre es sicherer.</translation>
    </message>
    <message>
        <source>A scale that is less far out would make it surer.</source>
        <translation>Mit einer Waage, die weniger daneben­liegt, wäre es sicherer.</translation>
    </message>
    <message>
        <source>What one end weighs and what the other weighs, added up.</source>
        <translation>Was das eine Ende wiegt und was das andere wiegt, zusammen­gezählt.</translation>
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
        <translation>heraus­genommene Person</translation>
    </message>
    <message>
        <source>out of use, %1</source>
        <translation>gesperrt, %1</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>borrowed %1</source>
        <translation>%1 geliehen</translation>
    </message>
    <message>
        <source>borrowed it</source>
        <translation>geliehen</translation>
    </message>
    <message>
        <source>lent %1</source>
        <translation>%1 verliehen</translation>
    </message>
    <message>
        <source>lent it</source>
        <translation>verliehen</translation>
    </message>
    <message>
        <source>back again, %1</source>
        <translation>wieder zurück, %1</translation>
    </message>
    <message>
        <source>back again</source>
        <translation>wieder zurück</translation>
    </message>
    <message>
        <source>looked over, %1</source>
        <translation>durch­gesehen, %1</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>durch­gesehen</translation>
    </message>
    <message>
        <source>lift %1</source>
        <translation>Übung %1</translation>
    </message>
    <message>
        <source>a lift taken out</source>
        <translation>eine heraus­genommene Übung</translation>
    </message>
    <message>
        <source>kept %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>kept body mass or height</source>
        <translation>Körpermasse oder Größe behalten</translation>
    </message>
    <message>
        <source>kept set-up: %1</source>
        <translation>Aufbau behalten: %1</translation>
    </message>
    <message>
        <source>kept a set-up</source>
        <translation>Aufbau behalten</translation>
    </message>
    <message>
        <source>changed units</source>
        <translation>Einheiten geändert</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>heraus­genommen</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>geklärt</translation>
    </message>
    <message>
        <source>took kit along: %1</source>
        <translation>Material mitgenommen: %1</translation>
    </message>
    <message>
        <source>took kit along</source>
        <translation>Material mitgenommen</translation>
    </message>
    <message>
        <source>copied a list: %1</source>
        <translation>Liste kopiert: %1</translation>
    </message>
    <message>
        <source>copied a list</source>
        <translation>Liste kopiert</translation>
    </message>
    <message>
        <source>kept a test of strength</source>
        <translation>Krafttest behalten</translation>
    </message>
    <message>
        <source>gave a clearance</source>
        <translation>Freigabe erteilt</translation>
    </message>
    <message>
        <source>took a clearance back</source>
        <translation>Freigabe zurück­genommen</translation>
    </message>
    <message>
        <source>set a day status</source>
        <translation>Tagesstand gesetzt</translation>
    </message>
    <message>
        <source>lifted a day status</source>
        <translation>Tagesstand auf­gehoben</translation>
    </message>
    <message>
        <source>changed limits</source>
        <translation>Grenzen geändert</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day as the language writes it: d, MMM and yyyy stand for day, month and year</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>kept an isometric pull</source>
        <translation>isometrischen Zug behalten</translation>
    </message>
    <message>
        <source>A name is missing.</source>
        <translation>Ein Name fehlt.</translation>
    </message>
    <message>
        <source>Type one, then keep it.</source>
        <translation>Gib einen ein, dann behalte ihn.</translation>
    </message>
    <message>
        <source>That text is too long.</source>
        <translation>Dieser Text ist zu lang.</translation>
    </message>
    <message>
        <source>Make it shorter, then keep it.</source>
        <translation>Kürze ihn, dann behalte ihn.</translation>
    </message>
    <message>
        <source>That text cannot be read.</source>
        <translation>Dieser Text ist nicht lesbar.</translation>
    </message>
    <message>
        <source>Type it again, then keep it.</source>
        <translation>Gib ihn neu ein, dann behalte ihn.</translation>
    </message>
    <message>
        <source>That birth year cannot be right.</source>
        <translation>Dieses Geburtsjahr kann nicht stimmen.</translation>
    </message>
    <message>
        <source>It lies before 1900 or still to come: type it again, or leave it out.</source>
        <translation>Es liegt vor 1900 oder in der Zukunft: Gib es neu ein oder lass es weg.</translation>
    </message>
    <message>
        <source>The birth year comes first.</source>
        <translation>Das Geburtsjahr kommt zuerst.</translation>
    </message>
    <message>
        <source>Without it nobody knows whether a guardian has to agree.</source>
        <translation>Ohne Geburtsjahr weiß niemand, ob die Ein­willigung der Eltern nötig ist.</translation>
    </message>
    <message>
        <source>A guardian has to agree first.</source>
        <translation>Zuerst ist die Ein­willigung der Eltern nötig.</translation>
    </message>
    <message>
        <source>Until then only name, squad and loads are kept. Record who agreed, then keep it.</source>
        <translation>Bis dahin werden nur Name, Kader und Lasten behalten. Trag ein, wer ein­gewilligt hat, dann behalte es.</translation>
    </message>
    <message>
        <source>The agreement is not complete.</source>
        <translation>Die Ein­willigung ist nicht vollständig.</translation>
    </message>
    <message>
        <source>Say who agreed; its day cannot lie ahead.</source>
        <translation>Sag, wer ein­gewilligt hat; der Tag darf nicht in der Zukunft liegen.</translation>
    </message>
    <message>
        <source>A number there cannot be right.</source>
        <translation>Eine Zahl dort kann nicht stimmen.</translation>
    </message>
    <message>
        <source>Type it again, or leave it out.</source>
        <translation>Gib sie neu ein oder lass sie weg.</translation>
    </message>
    <message>
        <source>Nothing was measured.</source>
        <translation>Es wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Enter body mass or height, then keep it.</source>
        <translation>Trag Körpermasse oder Größe ein, dann behalte sie.</translation>
    </message>
    <message>
        <source>Those reps do not go together.</source>
        <translation>Diese Wieder­holungen passen nicht zusammen.</translation>
    </message>
    <message>
        <source>A missed rep leaves none in reserve, and a maximum is one rep. Count them again, then keep it.</source>
        <translation>Nach einer verfehlten bleibt keine in Reserve, und ein Maximum ist eine Wieder­holung. Zähl noch einmal, dann behalte es.</translation>
    </message>
    <message>
        <source>Nobody is named.</source>
        <translation>Niemand ist genannt.</translation>
    </message>
    <message>
        <source>Say who gave or set it, then keep it.</source>
        <translation>Sag, wer es erteilt oder gesetzt hat, dann behalte es.</translation>
    </message>
    <message>
        <source>It would end before it begins.</source>
        <translation>Es würde enden, bevor es anfängt.</translation>
    </message>
    <message>
        <source>Put a later last day, or none.</source>
        <translation>Setz einen späteren letzten Tag oder keinen.</translation>
    </message>
    <message>
        <source>What may be done and what not do not go together.</source>
        <translation>Was geht und was nicht, passt nicht zusammen.</translation>
    </message>
    <message>
        <source>Some: say what not, or why. All or none: name nothing.</source>
        <translation>Einiges: sag, was nicht, oder warum. Alles oder nichts: nenne nichts.</translation>
    </message>
    <message>
        <source>No limit can lie there.</source>
        <translation>Dort kann keine Grenze liegen.</translation>
    </message>
    <message>
        <source>Put another number, or leave it to ours.</source>
        <translation>Setz eine andere Zahl oder lass unsere stehen.</translation>
    </message>
    <message>
        <source>That day lies ahead.</source>
        <translation>Dieser Tag kommt erst noch.</translation>
    </message>
    <message>
        <source>Put the day on which it was measured, then keep it.</source>
        <translation>Trag ein, an welchem Tag gemessen wurde, dann behalte es.</translation>
    </message>
    <message>
        <source>It is the only measurement.</source>
        <translation>Es ist die einzige Messung.</translation>
    </message>
    <message>
        <source>Measure the thing again first, or take the thing itself out of the kit.</source>
        <translation>Miss das Stück zuerst neu, oder nimm es ganz aus dem Material heraus.</translation>
    </message>
    <message>
        <source>This athlete is not in the squad any more.</source>
        <translation>Diese Athletin ist nicht mehr im Kader.</translation>
    </message>
    <message>
        <source>Add the person anew, or undo the taking out.</source>
        <translation>Nimm die Person neu auf, oder mach das Heraus­nehmen rückgängig.</translation>
    </message>
    <message>
        <source>This venue is not there any more.</source>
        <translation>Diesen Ort gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Choose another venue, then keep it.</source>
        <translation>Wähle einen anderen Ort, dann behalte es.</translation>
    </message>
    <message>
        <source>This thing is not in the kit any more.</source>
        <translation>Dieses Stück ist nicht mehr im Material.</translation>
    </message>
    <message>
        <source>Measure it anew, or undo the taking out.</source>
        <translation>Miss es neu, oder mach das Heraus­nehmen rückgängig.</translation>
    </message>
    <message>
        <source>This set-up is not there any more.</source>
        <translation>Diesen Aufbau gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Keep it as a new one.</source>
        <translation>Behalte ihn als neuen.</translation>
    </message>
    <message>
        <source>It is not said for which lift.</source>
        <translation>Es ist nicht gesagt, für welche Übung.</translation>
    </message>
    <message>
        <source>Choose the athlete and the lift first, then keep it.</source>
        <translation>Wähle zuerst Athletin und Übung, dann behalte es.</translation>
    </message>
    <message>
        <source>That is not there any more.</source>
        <translation>Das gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Look at the list again.</source>
        <translation>Sieh noch einmal in die Liste.</translation>
    </message>
    <message>
        <source>That was said before.</source>
        <translation>Das ist schon gesagt.</translation>
    </message>
    <message>
        <source>Nothing more is needed.</source>
        <translation>Mehr braucht es nicht.</translation>
    </message>
    <message>
        <source>Not kept: this is the example, and everybody knows its passphrase.</source>
        <translation>Nicht behalten: Das ist das Beispiel, und seine Passphrase kennt jeder.</translation>
    </message>
    <message>
        <source>It takes no names or notes of yours. Start a vault of your own for your people: remove the example in Preferences.</source>
        <translation>Es nimmt keine Namen oder Notizen von dir an. Leg für deine Leute einen eigenen Tresor an: Entferne das Beispiel in den Ein­stellungen.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>Es gibt nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <source>The list holds the last 20 of this session.</source>
        <translation>Die Liste enthält die letzten 20 dieser Sitzung.</translation>
    </message>
    <message>
        <source>Something newer stands there.</source>
        <translation>Dort steht etwas Neueres.</translation>
    </message>
    <message>
        <source>Undo that first; it is further up in the list.</source>
        <translation>Mach zuerst das rückgängig; es steht weiter oben in der Liste.</translation>
    </message>
    <message>
        <source>Kept, with the last space there was.</source>
        <translation>Behalten, mit dem letzten freien Platz.</translation>
    </message>
    <message>
        <source>This device is full. Free some space now, or the next entry cannot be kept.</source>
        <translation>Dieses Gerät ist voll. Mach jetzt Platz, sonst kann der nächste Eintrag nicht behalten werden.</translation>
    </message>
    <message>
        <source>changed what loads are held against: %1</source>
        <translation>geändert, woran Lasten gemessen werden: %1</translation>
    </message>
    <message>
        <source>changed what loads are held against</source>
        <translation>geändert, woran Lasten gemessen werden</translation>
    </message>
    <message>
        <source>kept how a sled slides</source>
        <translation>behalten, wie ein Schlitten gleitet</translation>
    </message>
    <message>
        <source>kept a timed run with a sled</source>
        <translation>einen gestoppten Lauf mit einem Schlitten behalten</translation>
    </message>
    <message>
        <source>A sled has to be pulled with two different loads, or more.</source>
        <translation>Ein Schlitten muss mit zwei verschiedenen Lasten oder mehr gezogen werden.</translation>
    </message>
    <message>
        <source>Pull it once more with another load.</source>
        <translation>Noch einmal mit einer anderen Last ziehen.</translation>
    </message>
</context>
<context>
    <name>lifts</name>
    <message>
        <source>back squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <source>front squat</source>
        <translation>Front­kniebeuge</translation>
    </message>
    <message>
        <source>split squat</source>
        <translation>Split-Kniebeuge</translation>
    </message>
    <message>
        <source>single-leg squat</source>
        <translation>einbeinige Kniebeuge</translation>
    </message>
    <message>
        <source>step-up</source>
        <translation>Step-up</translation>
    </message>
    <message>
        <source>bench press</source>
        <translation>Bankdrücken</translation>
    </message>
    <message>
        <source>incline press</source>
        <translation>Schrägbank­drücken</translation>
    </message>
    <message>
        <source>overhead press</source>
        <translation>Überkopf­drücken</translation>
    </message>
    <message>
        <source>push press</source>
        <translation>Schwung­drücken</translation>
    </message>
    <message>
        <source>bent-over row</source>
        <translation>vor­gebeugtes Rudern</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>Klimmzug, Obergriff</translation>
    </message>
    <message>
        <source>chin-up</source>
        <translation>Klimmzug, Untergriff</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>Dip</translation>
    </message>
    <message>
        <source>deadlift</source>
        <translation>Kreuzheben</translation>
    </message>
    <message>
        <source>hex-bar deadlift</source>
        <translation>Hex-Bar-Kreuzheben</translation>
    </message>
    <message>
        <source>Romanian deadlift</source>
        <translation>rumänisches Kreuzheben</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>Hip Thrust</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>Umsetzen</translation>
    </message>
    <message>
        <source>jerk</source>
        <translation>Ausstoßen</translation>
    </message>
    <message>
        <source>snatch</source>
        <translation>Reißen</translation>
    </message>
    <message>
        <source>clean pull</source>
        <translation>Umsetzzug</translation>
    </message>
    <message>
        <source>snatch pull</source>
        <translation>Reißzug</translation>
    </message>
    <message>
        <source>leg press, two legs</source>
        <translation>Beinpresse, beidbeinig</translation>
    </message>
    <message>
        <source>leg press, one leg</source>
        <translation>Beinpresse, einbeinig</translation>
    </message>
    <message>
        <source>isometric squat</source>
        <translation>iso­metrische Kniebeuge</translation>
    </message>
    <message>
        <source>isometric mid-thigh pull</source>
        <translation>iso­metrischer Zug, Oberschenkel­mitte</translation>
    </message>
    <message>
        <source>kettlebell swing</source>
        <translation>Kettlebell-Schwingen</translation>
    </message>
    <message>
        <source>kettlebell clean</source>
        <translation>Kettlebell-Umsetzen</translation>
    </message>
    <message>
        <source>kettlebell press</source>
        <translation>Kettlebell-Drücken</translation>
    </message>
    <message>
        <source>log clean and press</source>
        <translation>Baumstamm-Umsetzen und -Drücken</translation>
    </message>
    <message>
        <source>keg press</source>
        <translation>Fassdrücken</translation>
    </message>
    <message>
        <source>tyre flip</source>
        <translation>Reifen­wenden</translation>
    </message>
    <message>
        <source>farmer&apos;s carry</source>
        <translation>Koffer­tragen beidseitig</translation>
    </message>
    <message>
        <source>suitcase carry</source>
        <translation>Koffer­tragen einseitig</translation>
    </message>
    <message>
        <source>yoke carry</source>
        <translation>Jochtragen</translation>
    </message>
    <message>
        <source>front carry</source>
        <translation>Fronttragen</translation>
    </message>
    <message>
        <source>overhead carry</source>
        <translation>Überkopf­tragen</translation>
    </message>
    <message>
        <source>sled tow</source>
        <translation>Schlitten­ziehen</translation>
    </message>
    <message>
        <source>sled push</source>
        <translation>Schlitten­schieben</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>medicine-ball throw</source>
        <translation>Medizinball­wurf</translation>
    </message>
</context>
<context>
    <name>limittexts</name>
    <message>
        <source>Tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>On the way down</source>
        <translation>Auf dem Weg nach unten</translation>
    </message>
    <message>
        <source>A maximum counts for</source>
        <translation>Ein Maximum zählt</translation>
    </message>
    <message>
        <source>A band&apos;s measurement is fresh for</source>
        <translation>Die Messung eines Bands ist frisch</translation>
    </message>
    <message>
        <source>An anchor is held by</source>
        <translation>Ein Anker wird gehalten mit</translation>
    </message>
    <message>
        <source>Of age</source>
        <translation>Volljährig</translation>
    </message>
    <message>
        <source>of the lowest estimate of her deadlift, the tyre&apos;s give-or-take counted in</source>
        <translation>der niedrigsten Schätzung ihres Kreuzhebens, das Mehr oder Weniger des Reifens mitgezählt</translation>
    </message>
    <message>
        <source>of the lowest estimate of her maximum, at its worst place</source>
        <translation>der niedrigsten Schätzung ihres Maximums, an der schlimmsten Stelle</translation>
    </message>
    <message>
        <source>after that it is tested or estimated again</source>
        <translation>danach wird es neu getestet oder geschätzt</translation>
    </message>
    <message>
        <source>after that what is uncertain of its pull counts half as much again</source>
        <translation>danach zählt das Unsichere an seinem Zug um die Hälfte mehr</translation>
    </message>
    <message>
        <source>the greatest pull on it; with less the load is not to be lifted</source>
        <translation>der größte Zug daran; mit weniger wird die Last nicht gehoben</translation>
    </message>
    <message>
        <source>before it maximal lifts, eccentric overload and tyres need an approval by name</source>
        <translation>davor brauchen maximale Lasten, exzentrische Überlast und Reifen eine nament­liche Zustimmung</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1-fach</translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n Jahr</numerusform>
            <numerusform>%n Jahre</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lookovertexts</name>
    <message>
        <source>Every link, held slack: worn where links meet, bent, open, cracked or stretched; a hook or carabiner that does not close. Chain slings are put away once a link has lost a tenth of its thickness (EN 818-6, annex A, from memory).</source>
        <translation>Jedes Glied, bei schlaffer Kette: ver­schlissen, wo die Glieder aufeinander­liegen, verbogen, offen, gerissen oder gelängt; ein Haken oder Karabiner, der nicht schließt. Anschlag­ketten werden aus­gesondert, sobald ein Glied ein Zehntel seiner Dicke verloren hat (EN 818-6, Anhang A, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>All of it, stretched by hand to arm&apos;s length, face turned away: a cut, a crack, a thin place, rubber that is sticky or has gone white (common practice, no source).</source>
        <translation>Das ganze Band, von Hand auf Armlänge gedehnt, Gesicht abgewandt: ein Schnitt, ein Riss, eine dünne Stelle, Gummi, das klebt oder weiß geworden ist (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>All round, stretched by hand: a cut, a thin place, rubber that is sticky or has gone white, a seam that gives (common practice, no source).</source>
        <translation>Rundum, von Hand gedehnt: ein Schnitt, eine dünne Stelle, Gummi, das klebt oder weiß geworden ist, eine Naht, die nachgibt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>The cable along its whole way: a broken strand, a bulge, a torn sleeve. The pin: bent, or not all the way in. Welds and bolts: a crack, a gap (common practice, no source). Keep fingers out of the stack.</source>
        <translation>Das Seil auf seinem ganzen Weg: eine gebrochene Litze, eine Beule, ein gerissener Mantel. Der Stift: verbogen oder nicht ganz drin. Schweiß­nähte und Schrauben: ein Riss, ein Spalt (übliche Praxis, keine Quelle). Finger raus aus dem Gewichts­block.</translation>
    </message>
    <message>
        <source>A minute with nothing on it: a zero that runs away. Its hooks: bent or open. Dropped or overloaded since it was checked (common practice, no source): check it with a known mass before it counts again.</source>
        <translation>Eine Minute unbelastet: eine Null, die wegläuft. Die Haken: verbogen oder offen. Seit der Prüfung herunter­gefallen oder überlastet (übliche Praxis, keine Quelle): Prüfe die Waage mit einer bekannten Masse, bevor sie wieder zählt.</translation>
    </message>
    <message>
        <source>Plates: a crack at the hole or the rim. Bar: bent, a sleeve that sticks. Collars: worn, sliding (common practice, no source).</source>
        <translation>Scheiben: ein Riss am Loch oder am Rand. Stange: verbogen, eine Hülse, die klemmt. Verschlüsse: ver­schlissen, rutschend (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>The whole length, both faces: a cut, a frayed edge, stitching that has come loose; a buckle that slips, a hook that does not close (common practice, no source).</source>
        <translation>Die ganze Länge, beide Flächen: ein Schnitt, ein aus­gefranster Rand, Nähte, die sich gelöst haben; eine Schnalle, die rutscht, ein Haken, der nicht schließt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>Pins and safeties: bent, or not all the way through. Holes pulled long. Welds, feet and bolts: a crack, a gap, anything that rocks (common practice, no source).</source>
        <translation>Stifte und Sicherheits­ablagen: verbogen oder nicht ganz durch­gesteckt. Löcher langgezogen. Schweiß­nähte, Füße und Schrauben: ein Riss, ein Spalt, alles, was wackelt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>worn link</source>
        <translation>ver­schlissenes Glied</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>bent or open link</source>
        <translation>Glied verbogen oder offen</translation>
    </message>
    <message>
        <source>hook bent or open</source>
        <translation>Haken verbogen oder offen</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>sticky or gone white</source>
        <translation>klebt oder weiß geworden</translation>
    </message>
    <message>
        <source>loose seam</source>
        <translation>lose Naht</translation>
    </message>
    <message>
        <source>frayed cable</source>
        <translation>aus­gefranstes Seil</translation>
    </message>
    <message>
        <source>bent or loose pin</source>
        <translation>Stift verbogen oder lose</translation>
    </message>
    <message>
        <source>zero runs away</source>
        <translation>Null läuft weg</translation>
    </message>
    <message>
        <source>was dropped</source>
        <translation>herunter­gefallen</translation>
    </message>
    <message>
        <source>worn collar</source>
        <translation>ver­schlissener Verschluss</translation>
    </message>
    <message>
        <source>slipping buckle</source>
        <translation>Schnalle rutscht</translation>
    </message>
    <message>
        <source>cracked weld</source>
        <translation>Schweißnaht gerissen</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>All round: wire that shows, a tear or a bulge in a sidewall, glass or nails in the tread; water that is left in it (common practice, no source).</source>
        <translation>Ringsum: Draht, der zu sehen ist, ein Riss oder eine Beule in der Flanke, Glas oder Nägel im Profil; Wasser, das noch darin ist (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>All of it: a split, rot, a nail that stands out; handles that move (common practice, no source).</source>
        <translation>Ganz: ein Spalt, Fäule, ein Nagel, der heraussteht; Griffe, die sich bewegen (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>All round: a crack, an edge that cuts, a face that flakes (common practice, no source).</source>
        <translation>Ringsum: ein Riss, eine Kante, die schneidet, eine Fläche, die abblättert (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>A keg: whether it still holds gas, by whoever brought it; never open or drop one under pressure. Its valve, welds and rims: a leak, a dent, an edge that cuts. A bag: seams and handles (common practice, no source).</source>
        <translation>Ein Fass: ob es noch Gas hält, von dem, der es gebracht hat; unter Druck nie öffnen oder fallen lassen. Ventil, Schweißnähte und Ränder: ein Leck, eine Delle, eine Kante, die schneidet. Ein Sack: Nähte und Griffe (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>Runners and welds: a crack, an edge that digs in. Strap, hook and belt: a cut, stitching that has come loose, a hook that does not close (common practice, no source).</source>
        <translation>Kufen und Schweißnähte: ein Riss, eine Kante, die sich eingräbt. Gurt, Haken und Gürtel: ein Schnitt, eine lose Naht, ein Haken, der nicht schließt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>Grips that turn or slide, pins and collars for the plates, welds: a crack, a gap (common practice, no source).</source>
        <translation>Griffe, die sich drehen oder rutschen, Stifte und Verschlüsse für die Scheiben, Schweißnähte: ein Riss, ein Spalt (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>Handle: rough, loose or cracked. What can be set: a lock that does not hold (common practice, no source).</source>
        <translation>Griff: rau, lose oder gerissen. Was sich einstellen lässt: eine Sperre, die nicht hält (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>wire showing</source>
        <translation>Draht zu sehen</translation>
    </message>
    <message>
        <source>torn sidewall</source>
        <translation>Flanke gerissen</translation>
    </message>
    <message>
        <source>under pressure</source>
        <translation>unter Druck</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>Leck</translation>
    </message>
    <message>
        <source>split</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>loose handle</source>
        <translation>loser Griff</translation>
    </message>
</context>
<context>
    <name>marktexts</name>
    <message>
        <source>hole %1 of a rack</source>
        <translation>Loch %1 eines Racks</translation>
    </message>
    <message>
        <source>hole %1 of %2</source>
        <translation>Loch %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, as the rack was measured then</source>
        <translation>%1, so wie das Rack damals gemessen war</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 at %2 by tape</source>
        <translation>%1 bei %2 mit Maßband</translation>
    </message>
    <message>
        <source>bottom by the plates that stand on the floor</source>
        <translation>unten nach den Scheiben, die auf dem Boden stehen</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>Rack</translation>
    </message>
    <message>
        <source>sticking zone from</source>
        <translation>Sticking-Zone von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
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
        <translation>Seit %1: keine klare Änderung %2. Der Unterschied von %3 liegt innerhalb der Un­sicherheit.</translation>
    </message>
    <message>
        <source>Since %1 it helps %2 less %3: more than measuring error.</source>
        <translation>Seit %1: %2 weniger Hilfe %3, mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>Since %1 it helps %2 more %3: more than measuring error.</source>
        <translation>Seit %1: %2 mehr Hilfe %3, mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>Since %1: no clear change at %2. The difference of %3 is within the give-or-take.</source>
        <translation>Seit %1: keine klare Änderung bei %2. Der Unterschied von %3 liegt innerhalb der Un­sicherheit.</translation>
    </message>
    <message>
        <source>Since %1: no clear change. The difference of %2 is within the give-or-take.</source>
        <translation>Seit %1: keine klare Änderung. Der Unterschied von %2 liegt innerhalb der Un­sicherheit.</translation>
    </message>
    <message>
        <source>Since %1 it pulls %2 less at %3: more than measuring error.</source>
        <translation>Seit %1: %2 weniger Zug bei %3, mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>Since %1 it pulls %2 more at %3: more than measuring error.</source>
        <translation>Seit %1: %2 mehr Zug bei %3, mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>%1 lighter a foot than on %2: more than measuring error.</source>
        <translation>%1 pro Fuß leichter als am %2: mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>%1 heavier a foot than on %2: more than measuring error.</source>
        <translation>%1 pro Fuß schwerer als am %2: mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>%1 lighter a metre than on %2: more than measuring error.</source>
        <translation>%1 pro Meter leichter als am %2: mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>%1 heavier a metre than on %2: more than measuring error.</source>
        <translation>%1 pro Meter schwerer als am %2: mehr als der Messfehler.</translation>
    </message>
    <message>
        <source>Too close to call: they differ by %1, which is within the give-or-take.</source>
        <translation>Zu knapp: Der Unterschied von %1 liegt innerhalb der Un­sicherheit.</translation>
    </message>
    <message>
        <source>It helps %1 less than %2 %3.</source>
        <translation>Hilft %3 um %1 weniger als %2.</translation>
    </message>
    <message>
        <source>It helps %1 more than %2 %3.</source>
        <translation>Hilft %3 um %1 mehr als %2.</translation>
    </message>
    <message>
        <source>It pulls %1 less than %2 at %3.</source>
        <translation>Zieht bei %3 um %1 weniger als %2.</translation>
    </message>
    <message>
        <source>It pulls %1 more than %2 at %3.</source>
        <translation>Zieht bei %3 um %1 mehr als %2.</translation>
    </message>
    <message>
        <source>It weighs %1 less than %2 for its length.</source>
        <translation>Wiegt auf die Länge um %1 weniger als %2.</translation>
    </message>
    <message>
        <source>It weighs %1 more than %2 for its length.</source>
        <translation>Wiegt auf die Länge um %1 mehr als %2.</translation>
    </message>
    <message>
        <source>%1 One side would be heavier: find each another partner.</source>
        <translation>%1 Eine Seite wäre schwerer: Such für beide je ein anderes Gegenstück.</translation>
    </message>
    <message>
        <source>%1 Close enough for a pair.</source>
        <translation>%1 Nah genug für ein Paar.</translation>
    </message>
    <message>
        <source>About %1, to reach %2</source>
        <translation>Etwa %1, um auf %2 zu kommen</translation>
    </message>
    <message>
        <source>As much as brings it to about %1</source>
        <translation>So viel, dass es auf etwa %1 kommt</translation>
    </message>
    <message numerus="yes">
        <source>Where the shade is wide, %n readings cannot yet tell their own scatter from the curve: one more narrows it most.</source>
        <translation>
            <numerusform>Wo die Schattie­rung breit ist, trennt %n Ablesung die eigene Streuung noch nicht von der Kurve: Eine weitere engt sie am meisten ein.</numerusform>
            <numerusform>Wo die Schattie­rung breit ist, trennen %n Ablesungen die eigene Streuung noch nicht von der Kurve: Eine weitere engt sie am meisten ein.</numerusform>
        </translation>
    </message>
    <message>
        <source>Three lengths, spread out, make a curve.</source>
        <translation>Drei Längen, gut verteilt, ergeben eine Kurve.</translation>
    </message>
    <message>
        <source>You use it to %1; so far it is read only to %2.</source>
        <translation>Du nutzt es bis %1; abgelesen ist bisher nur bis %2.</translation>
    </message>
    <message>
        <source>You use it to %1.</source>
        <translation>Du nutzt es bis %1.</translation>
    </message>
    <message>
        <source>There the curve is least sure.</source>
        <translation>Dort ist die Kurve am un­sichersten.</translation>
    </message>
    <message>
        <source>While taking off it pulls %1 less at %2. What counts is the way up.</source>
        <translation>Beim Abnehmen zieht es bei %2 um %1 weniger. Es zählt der Weg hinauf.</translation>
    </message>
    <message>
        <source>While taking off it pulls as much at %1.</source>
        <translation>Beim Abnehmen zieht es bei %1 genauso viel.</translation>
    </message>
    <message>
        <source>measured %1, due again</source>
        <translation>gemessen %1, wieder fällig</translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n days</source>
        <translation>
            <numerusform>gemessen %1, morgen fällig</numerusform>
            <numerusform>gemessen %1, in %n Tagen fällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n weeks</source>
        <translation>
            <numerusform>gemessen %1, in %n Woche fällig</numerusform>
            <numerusform>gemessen %1, in %n Wochen fällig</numerusform>
        </translation>
    </message>
    <message>
        <source>out of use since %1: %2</source>
        <translation>gesperrt seit %1: %2</translation>
    </message>
    <message>
        <source>out of use since %1: %2, %3</source>
        <translation>gesperrt seit %1: %2, %3</translation>
    </message>
    <message>
        <source>Gauged is within 6 %. Weighing it would be surer.</source>
        <translation>Ausgemessen stimmt es auf 6 %. Wiegen wäre sicherer.</translation>
    </message>
    <message>
        <source>The scale is coarse for it: one with a finer step would be surer, or both of a pair on it at once.</source>
        <translation>Die Waage ist dafür grob: Eine mit feinerem Teilschritt wäre sicherer, oder beide eines Paars zugleich daran.</translation>
    </message>
</context>
<context>
    <name>origintexts</name>
    <message>
        <source>what is marked on it, added up</source>
        <translation>die Auf­schriften, zusammen­gezählt</translation>
    </message>
    <message>
        <source>what is marked on it, added up; nobody has weighed the plates, so 2 % either way (our choice)</source>
        <translation>die Auf­schriften, zusammen­gezählt; die Scheiben hat niemand gewogen, daher 2 % in beide Richtungen (unsere Wahl)</translation>
    </message>
    <message>
        <source>what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it</source>
        <translation>was eine Waage zeigte und beim Rest die Aufschrift, zusammen­gezählt; dieselbe Waage liegt bei allem gleich weit daneben</translation>
    </message>
    <message>
        <source>what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it, and plates that nobody has weighed by 2 % either way (our choice)</source>
        <translation>was eine Waage zeigte und beim Rest die Aufschrift, zusammen­gezählt; dieselbe Waage liegt bei allem gleich weit daneben, und Scheiben, die niemand gewogen hat, um 2 % in beide Richtungen (unsere Wahl)</translation>
    </message>
    <message>
        <source>what a metre weighs, times the metres that are off the floor; put on a scale</source>
        <translation>was ein Meter wiegt, mal die Meter, die vom Boden weg sind; mit der Waage gewogen</translation>
    </message>
    <message>
        <source>what a metre weighs, times the metres that are off the floor; by wire, pitch and inner width, 3 % (chain tables differ by as much)</source>
        <translation>was ein Meter wiegt, mal die Meter, die vom Boden weg sind; nach Drahtdicke, Teilung und innerer Breite, 3 % (um so viel weichen Ketten­tabellen ab)</translation>
    </message>
    <message>
        <source>what it pulls at the length it has there, upright; read with known plates on it</source>
        <translation>was es bei seiner Länge dort senkrecht zieht; abgelesen mit bekannten Scheiben daran</translation>
    </message>
    <message>
        <source>what it pulls at the length it has there, upright; read with known plates on one of the pair, the other taken for its twin: 3 % more on the length at rest</source>
        <translation>was es bei seiner Länge dort senkrecht zieht; abgelesen mit bekannten Scheiben an einem des Paars, das andere gilt als Zwilling: 3 % zusätzlich auf die Ruhelänge</translation>
    </message>
    <message>
        <source>what it carries at that height over the chest; read with known plates resting on it, 2 % either way for them and a centimetre for the height (our choices)</source>
        <translation>was sie in dieser Höhe über der Brust trägt; abgelesen mit bekannten Scheiben darauf, für sie 2 % in beide Richtungen und für die Höhe ein Zentimeter (unsere Wahl)</translation>
    </message>
    <message>
        <source>read to a centimetre (our choice), times how steeply the pull rises there</source>
        <translation>auf einen Zentimeter genau abgelesen (unsere Wahl), mal Anstieg des Zugs dort</translation>
    </message>
    <message>
        <source>off the rack</source>
        <translation>aus dem Rack</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>sticking zone</source>
        <translation>Sticking-Zone</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>mean of the path</source>
        <translation>Mittel der Bahn</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>Bar, collars and plates</source>
        <translation>Stange, Verschlüsse und Scheiben</translation>
    </message>
    <message>
        <source>Bar marks</source>
        <translation>Stangen­marken</translation>
    </message>
    <message>
        <source>nothing to speak of</source>
        <translation>nichts Nennens­wertes</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>%1. Measured %2</source>
        <translation>%1. Gemessen %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>No part makes most of the give-or-take.</source>
        <translation>Kein Teil macht den Großteil der Un­sicherheit aus.</translation>
    </message>
    <message>
        <source>Nothing here is uncertain enough to show.</source>
        <translation>Hier ist nichts unsicher genug, um es zu zeigen.</translation>
    </message>
    <message>
        <source>The plates make most of the give-or-take. Weigh them.</source>
        <translation>Die Scheiben machen den Großteil der Un­sicherheit aus. Wieg sie.</translation>
    </message>
    <message>
        <source>The iron makes most of the give-or-take. Weigh it on a finer scale, or a checked one.</source>
        <translation>Das Eisen macht den Großteil der Un­sicherheit aus. Wieg es mit einer feineren Waage oder einer geprüften.</translation>
    </message>
    <message>
        <source>The iron makes most of the give-or-take. Weigh the rest of the plates.</source>
        <translation>Das Eisen macht den Großteil der Un­sicherheit aus. Wieg auch die übrigen Scheiben.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Weigh more of it at once, or on a finer scale.</source>
        <translation>%1 macht den Großteil der Un­sicherheit aus. Wieg mehr davon auf einmal oder mit einer feineren Waage.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Put it on a scale.</source>
        <translation>%1 macht den Großteil der Un­sicherheit aus. An die Waage damit.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Hang more plates on it, at more lengths.</source>
        <translation>%1 macht den Großteil der Un­sicherheit aus. Häng mehr Scheiben daran, bei mehr Längen.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take. Measure the other of the pair by itself.</source>
        <translation>%1 macht den Großteil der Un­sicherheit aus. Miss das andere des Paars für sich.</translation>
    </message>
    <message>
        <source>%1 makes most of the give-or-take: it is steep there, and every height counts to a centimetre.</source>
        <translation>%1 macht den Großteil der Un­sicherheit aus: Dort ist es steil, und jede Höhe zählt auf einen Zentimeter.</translation>
    </message>
    <message>
        <source>The bar marks make most of the give-or-take. Read them twice, and where she really stops.</source>
        <translation>Die Stangen­marken machen den Großteil der Un­sicherheit aus. Lies sie zweimal ab, und zwar da, wo die Athletin wirklich anhält.</translation>
    </message>
</context>
<context>
    <name>readingtexts</name>
    <message>
        <source>at the chest</source>
        <translation>an der Brust</translation>
    </message>
    <message>
        <source>%1 above the chest</source>
        <translation>%1 über der Brust</translation>
    </message>
    <message>
        <source>%1 at the chest</source>
        <translation>%1 an der Brust</translation>
    </message>
    <message>
        <source>%1 at %2 above the chest</source>
        <translation>%1 bei %2 über der Brust</translation>
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
        <translation>bis zu %1 bei %2, Gewichts­block %3</translation>
    </message>
    <message>
        <source>pulls up to %1 at %2, stack %3</source>
        <translation>zieht bis zu %1 bei %2, Gewichts­block %3</translation>
    </message>
</context>
<context>
    <name>releasetexts</name>
    <message>
        <source>more than 99 of 100 reps</source>
        <translation>mehr als 99 von 100 Wiederholungen</translation>
    </message>
    <message>
        <source>fewer than 1 of 100 reps</source>
        <translation>weniger als 1 von 100 Wiederholungen</translation>
    </message>
    <message>
        <source>%1 of 100 reps</source>
        <translation>%1 von 100 Wiederholungen</translation>
    </message>
    <message>
        <source>%1 less than asked</source>
        <translation>%1 weniger als verlangt</translation>
    </message>
    <message>
        <source>%1 more than asked</source>
        <translation>%1 mehr als verlangt</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>Hoch: %1.</translation>
    </message>
    <message>
        <source>Down: %1.</source>
        <translation>Runter: %1.</translation>
    </message>
    <message>
        <source>%1 % of her 1RM up, %2 % down.</source>
        <translation>%1 % ihres 1RM hoch, %2 % runter.</translation>
    </message>
    <message>
        <source>The way down is %1 % of the way up.</source>
        <translation>Der Weg nach unten ist %1 % des Wegs nach oben.</translation>
    </message>
    <message>
        <source>Each hook: empty, %1</source>
        <translation>Jeder Haken: leer, %1</translation>
    </message>
    <message>
        <source>Each hook: %1, with its frame %2</source>
        <translation>Jeder Haken: %1, mit Gestell %2</translation>
    </message>
    <message>
        <source>Outside them, lifted off at the bottom: %1, each side %2</source>
        <translation>Außen davor, unten abgenommen: %1, je Seite %2</translation>
    </message>
    <message>
        <source>A partner pushes down with %1 and lets go at the bottom</source>
        <translation>Ein Partner drückt mit %1 nach unten und lässt unten los</translation>
    </message>
    <message>
        <source>A partner pushes down and lets go at the bottom: how hard is not known until it is read on a scale</source>
        <translation>Ein Partner drückt nach unten und lässt unten los: Wie fest, weiß man erst, wenn es eine Waage zeigt</translation>
    </message>
    <message>
        <source>The bands that hang below are let go at the bottom, both together</source>
        <translation>Die Bänder von unten werden unten losgelassen, beide zugleich</translation>
    </message>
    <message>
        <source>A dumbbell of %1 in each hand, dropped at the bottom</source>
        <translation>Eine Kurzhantel von %1 in jeder Hand, unten fallen gelassen</translation>
    </message>
    <message>
        <source>%1; what was asked takes %2 each</source>
        <translation>%1; für das Verlangte wären es je %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Rep %1: nothing is put back within the set, so the first alone is overloaded (common practice).</source>
        <translation>Wiederholung %1: Im Satz wird nichts wieder angehängt, also ist nur die erste überlastet (übliche Praxis).</translation>
    </message>
    <message>
        <source>Reps %1: spotters put it back at the top of each, both sides together.</source>
        <translation>Wiederholungen %1: Helfer hängen es oben jedes Mal wieder an, beide Seiten zugleich.</translation>
    </message>
    <message>
        <source>Reps %1: she puts it back herself, the bar in the rack, in rests of %2 s.</source>
        <translation>Wiederholungen %1: Sie hängt es selbst wieder an, die Stange im Rack, in Pausen von %2 s.</translation>
    </message>
    <message>
        <source>Reps %1: spotters put it back in rests of %2 s.</source>
        <translation>Wiederholungen %1: Helfer hängen es in Pausen von %2 s wieder an.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Down: %1 at the top, %2 just above %3, mean %4.</source>
        <translation>Runter: %1 oben, %2 knapp über %3, Mittel %4.</translation>
    </message>
    <message>
        <source>Down: not known.</source>
        <translation>Runter: nicht bekannt.</translation>
    </message>
    <message>
        <source>Up: %1 at the bottom, %2 at the top.</source>
        <translation>Hoch: %1 unten, %2 oben.</translation>
    </message>
    <message>
        <source>That side is %1 heavier: do not press, ride to the safeties.</source>
        <translation>Diese Seite ist %1 schwerer: nicht drücken, auf die Sicherheits­ablagen gehen.</translation>
    </message>
    <message>
        <source>The near hand would hold %1, and the far hand would have to pull down.</source>
        <translation>Die nahe Hand hielte %1, und die ferne müsste nach unten ziehen.</translation>
    </message>
    <message>
        <source>The near hand would hold %1, the far hand %2.</source>
        <translation>Die nahe Hand hielte %1, die ferne %2.</translation>
    </message>
    <message>
        <source>Of her own depth, %1 come so deep that both hooks are free.</source>
        <translation>Bei ihrer Tiefe kommen %1 so tief, dass beide Haken frei sind.</translation>
    </message>
    <message>
        <source>With one end 1° lower, %1; in the others one side stays on.</source>
        <translation>Mit einem Ende 1° tiefer sind es %1; in den anderen bleibt eine Seite dran.</translation>
    </message>
    <message>
        <source>The margin is yours, %1.</source>
        <translation>Der Abstand ist deiner, %1.</translation>
    </message>
    <message>
        <source>The margin is twice her own spread, %1.</source>
        <translation>Der Abstand ist das Doppelte ihrer eigenen Streuung, %1.</translation>
    </message>
    <message>
        <source>So that the bar&apos;s centre rests from %1 to %2, tried with an empty bar.</source>
        <translation>So, dass die Mitte der Stange von %1 bis %2 aufliegt, mit leerer Stange probiert.</translation>
    </message>
    <message>
        <source>At the upper end %1 touch them.</source>
        <translation>Am oberen Ende berühren %1 sie.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 % of the way up</source>
        <translation>%1 % des Wegs nach oben</translation>
    </message>
    <message>
        <source>%1 % of the 1RM down</source>
        <translation>%1 % des 1RM runter</translation>
    </message>
    <message>
        <source>%1, %2 % up</source>
        <translation>%1, %2 % hoch</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>release hooks</source>
        <translation>Auslösehaken</translation>
    </message>
    <message>
        <source>partner lifts plates off</source>
        <translation>Partner nimmt Scheiben ab</translation>
    </message>
    <message>
        <source>partner pushes</source>
        <translation>Partner drückt</translation>
    </message>
    <message>
        <source>bands let go</source>
        <translation>Bänder losgelassen</translation>
    </message>
    <message>
        <source>dumbbells dropped</source>
        <translation>Kurzhanteln fallen gelassen</translation>
    </message>
    <message>
        <source>%1: %2 down</source>
        <translation>%1: %2 runter</translation>
    </message>
    <message>
        <source>%1: %2 % up, %3 % of that down</source>
        <translation>%1: %2 % hoch, davon %3 % runter</translation>
    </message>
    <message>
        <source>%1: %2 % up, %3 % down</source>
        <translation>%1: %2 % hoch, %3 % runter</translation>
    </message>
    <message>
        <source>Her 1RM in this lift is not known: test it, or ask for loads.</source>
        <translation>Ihr 1RM in dieser Übung ist nicht bekannt: testen oder Lasten verlangen.</translation>
    </message>
    <message>
        <source>The load on the way up is none that can be hung: ask for another.</source>
        <translation>Die Last auf dem Weg nach oben lässt sich nicht anhängen: eine andere verlangen.</translation>
    </message>
    <message>
        <source>The way down has to be heavier than the way up: ask for more.</source>
        <translation>Der Weg nach unten muss schwerer sein als der nach oben: mehr verlangen.</translation>
    </message>
    <message>
        <source>The percentages are none that can be asked for: ask for others.</source>
        <translation>Diese Prozente lassen sich nicht verlangen: andere verlangen.</translation>
    </message>
    <message>
        <source>Weigh one hook: its frame is part of the load.</source>
        <translation>Einen Haken wiegen: Sein Gestell gehört zur Last.</translation>
    </message>
    <message>
        <source>The empty hooks are more than they may carry: read the rating again.</source>
        <translation>Die leeren Haken sind mehr, als sie tragen dürfen: die Angabe noch einmal lesen.</translation>
    </message>
    <message>
        <source>Not with these plates: a lighter bar leaves more for the hooks.</source>
        <translation>Nicht mit diesen Scheiben: Eine leichtere Stange lässt mehr für die Haken.</translation>
    </message>
    <message>
        <source>The sleeve does not hold all of it: ask for less, or use hooks.</source>
        <translation>Das alles passt nicht auf die Hülse: weniger verlangen oder Haken nehmen.</translation>
    </message>
    <message>
        <source>Say what one dumbbell weighs.</source>
        <translation>Sagen, was eine Kurzhantel wiegt.</translation>
    </message>
    <message>
        <source>Her depth: watch three reps at least and read the lowest bar in each, or use a box.</source>
        <translation>Ihre Tiefe: mindestens drei Wiederholungen ansehen und jeweils die tiefste Stange ablesen, oder eine Box nehmen.</translation>
    </message>
    <message>
        <source>Three reps at least: two say little of how they differ.</source>
        <translation>Mindestens drei Wiederholungen: Zwei sagen wenig darüber, wie sie sich unterscheiden.</translation>
    </message>
    <message>
        <source>Measure from the bar&apos;s centre to the top of the sleeve.</source>
        <translation>Von der Mitte der Stange bis oben auf die Hülse messen.</translation>
    </message>
    <message>
        <source>Try with an empty bar how far it goes on down until the lip is clear.</source>
        <translation>Mit leerer Stange probieren, wie weit sie noch sinkt, bis die Lippe frei ist.</translation>
    </message>
    <message>
        <source>On a box she has no spread of her own: say how far above it the hooks should be free.</source>
        <translation>Auf einer Box hat sie keine eigene Streuung: sagen, wie weit darüber die Haken frei sein sollen.</translation>
    </message>
    <message>
        <source>No setting of the hooks is long enough: shorter ones never let go.</source>
        <translation>Keine Einstellung der Haken ist lang genug: kürzere lassen nie los.</translation>
    </message>
    <message>
        <source>Measure from hook to hook: what one side would be heavier by stands on it.</source>
        <translation>Von Haken zu Haken messen: Daran hängt, was eine Seite ausmacht.</translation>
    </message>
    <message>
        <source>Measure from hand to hand again.</source>
        <translation>Noch einmal von Hand zu Hand messen.</translation>
    </message>
    <message>
        <source>The hooks&apos; feet have to stand between her top and her bottom: measure again.</source>
        <translation>Die Füße der Haken müssen zwischen ihrem Oben und ihrem Unten stehen: neu messen.</translation>
    </message>
    <message>
        <source>Her bar marks come first.</source>
        <translation>Zuerst ihre Stangenmarken.</translation>
    </message>
    <message>
        <source>Hang the bands that are to be let go, anchored below.</source>
        <translation>Die Bänder anhängen, die losgelassen werden sollen, unten verankert.</translation>
    </message>
    <message>
        <source>Measure her arched chest, lying as she will lie.</source>
        <translation>Ihre gewölbte Brust messen, so wie sie liegen wird.</translation>
    </message>
    <message>
        <source>Measure her throat, lying as she will lie: the bar has to rest above it and below the chest.</source>
        <translation>Ihre Kehle messen, so wie sie liegen wird: Die Stange muss darüber und unter der Brust aufliegen.</translation>
    </message>
    <message>
        <source>Something of it cannot be right: measure and enter it again.</source>
        <translation>Etwas davon kann nicht stimmen: neu messen und eintragen.</translation>
    </message>
    <message>
        <source>%1: %2 up, %3 down</source>
        <translation>%1: %2 hoch, %3 runter</translation>
    </message>
    <message>
        <source>%1 up · %2 down</source>
        <translation>%1 hoch · %2 runter</translation>
    </message>
    <message>
        <source>Bar: bare</source>
        <translation>Stange: leer</translation>
    </message>
    <message>
        <source>Bar, each side: %1</source>
        <translation>Stange, je Seite: %1</translation>
    </message>
    <message>
        <source>Hook, seat to foot: set to %1 (%2 or longer)</source>
        <translation>Haken, Sitz bis Fuß: auf %1 stellen (%2 oder länger)</translation>
    </message>
    <message>
        <source>Hook, seat to foot: %1 or longer</source>
        <translation>Haken, Sitz bis Fuß: %1 oder länger</translation>
    </message>
    <message>
        <source>Foot stands at %1, free at %2</source>
        <translation>Fuß steht bei %1, frei bei %2</translation>
    </message>
    <message>
        <source>If one side stays on</source>
        <translation>Wenn eine Seite dranbleibt</translation>
    </message>
    <message>
        <source>Safeties</source>
        <translation>Sicherheits­ablagen</translation>
    </message>
    <message>
        <source>Whether they let go</source>
        <translation>Ob sie loslassen</translation>
    </message>
    <message>
        <source>Overloaded</source>
        <translation>Überlastet</translation>
    </message>
    <message>
        <source>The set cannot be done as it is put down: look at reps, clusters and who puts back.</source>
        <translation>So lässt sich der Satz nicht machen: Wiederholungen, Gruppen und wer anhängt ansehen.</translation>
    </message>
    <message>
        <source>What she holds</source>
        <translation>Was sie hält</translation>
    </message>
    <message>
        <source>Published loads, as context and no advice</source>
        <translation>Veröffentlichte Lasten, zur Einordnung und kein Rat</translation>
    </message>
    <message>
        <source>top %1</source>
        <translation>oben %1</translation>
    </message>
    <message>
        <source>foot stands %1</source>
        <translation>Fuß steht %1</translation>
    </message>
    <message>
        <source>free %1</source>
        <translation>frei %1</translation>
    </message>
    <message>
        <source>Bar and hook from the side, to scale: at the top the hook hangs, at %1 its foot stands, at %2 the bar is free of it.</source>
        <translation>Stange und Haken von der Seite, maßstäblich: Oben hängt der Haken, bei %1 steht sein Fuß, bei %2 ist die Stange frei.</translation>
    </message>
    <message>
        <source>If one side stays on, that side is %1 heavier: do not press, ride to the safeties.</source>
        <translation>Bleibt eine Seite dran, ist diese Seite %1 schwerer: nicht drücken, auf die Sicherheits­ablagen gehen.</translation>
    </message>
</context>
<context>
    <name>saidtexts</name>
    <message>
        <source>%1 at first; put right on %2</source>
        <translation>zuerst %1; berichtigt am %2</translation>
    </message>
    <message>
        <source>%1 on %2 at first; put right on %3</source>
        <translation>zuerst %1 am %2; berichtigt am %3</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>keine Länge</translation>
    </message>
    <message>
        <source>%1, by its links</source>
        <translation>%1, nach den Gliedern</translation>
    </message>
    <message>
        <source>%1 and %2, weighed</source>
        <translation>%1 und %2, gewogen</translation>
    </message>
    <message numerus="yes">
        <source>%n hangings</source>
        <translation>
            <numerusform>%n Hängung</numerusform>
            <numerusform>%n Hängungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%n heights</source>
        <translation>
            <numerusform>%n Höhe</numerusform>
            <numerusform>%n Höhen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places, by its pull</source>
        <translation>
            <numerusform>%n Stelle, nach Zug</numerusform>
            <numerusform>%n Stellen, nach Zug</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n angles, by its radius</source>
        <translation>
            <numerusform>%n Winkel, nach Radius</numerusform>
            <numerusform>%n Winkel, nach Radius</numerusform>
        </translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message numerus="yes">
        <source>%n days old</source>
        <translation>
            <numerusform>%n Tag alt</numerusform>
            <numerusform>%n Tage alt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weeks old</source>
        <translation>
            <numerusform>%n Woche alt</numerusform>
            <numerusform>%n Wochen alt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n months old</source>
        <translation>
            <numerusform>%n Monat alt</numerusform>
            <numerusform>%n Monate alt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n years old</source>
        <translation>
            <numerusform>%n Jahr alt</numerusform>
            <numerusform>%n Jahre alt</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMM yyyy, hh:mm</source>
        <translation>d. MMM yyyy, hh:mm</translation>
    </message>
    <message>
        <source>%1, on this device</source>
        <translation>%1, auf diesem Gerät</translation>
    </message>
    <message>
        <source>%1, on device %2</source>
        <translation>%1, auf Gerät %2</translation>
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
        <translation>%1 pro Fuß</translation>
    </message>
    <message>
        <source>%1 a metre</source>
        <translation>%1 pro Meter</translation>
    </message>
    <message>
        <source>entered as %1 %2</source>
        <translation>eingetragen als %1 %2</translation>
    </message>
    <message>
        <source>about %1 ± %2</source>
        <translation>etwa %1 ± %2</translation>
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
        <translation>Linkes Band schlaff über %1</translation>
    </message>
    <message>
        <source>Right band slack above %1</source>
        <translation>Rechtes Band schlaff über %1</translation>
    </message>
    <message>
        <source>Bands slack above %1</source>
        <translation>Bänder schlaff über %1</translation>
    </message>
    <message>
        <source>Left band slack up to %1</source>
        <translation>Linkes Band schlaff bis %1</translation>
    </message>
    <message>
        <source>Right band slack up to %1</source>
        <translation>Rechtes Band schlaff bis %1</translation>
    </message>
    <message>
        <source>Bands slack up to %1</source>
        <translation>Bänder schlaff bis %1</translation>
    </message>
    <message>
        <source>Left chain: first link up at %1</source>
        <translation>Linke Kette: erstes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Right chain: first link up at %1</source>
        <translation>Rechte Kette: erstes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Chains: first link up at %1</source>
        <translation>Ketten: erstes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Left chain: last link off at %1</source>
        <translation>Linke Kette: letztes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Right chain: last link off at %1</source>
        <translation>Rechte Kette: letztes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Chains: last link off at %1</source>
        <translation>Ketten: letztes Glied hebt ab bei %1</translation>
    </message>
    <message>
        <source>Left side: not measured past %1</source>
        <translation>Linke Seite: über %1 hinaus nicht gemessen</translation>
    </message>
    <message>
        <source>Right side: not measured past %1</source>
        <translation>Rechte Seite: über %1 hinaus nicht gemessen</translation>
    </message>
    <message>
        <source>Not measured past %1</source>
        <translation>Über %1 hinaus nicht gemessen</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>sticking zone</source>
        <translation>Sticking-Zone</translation>
    </message>
    <message>
        <source>rack mark</source>
        <translation>Ablagehöhe</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>collars</source>
        <translation>Verschlüsse</translation>
    </message>
    <message>
        <source>plates</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>number of plates</source>
        <translation>Anzahl der Scheiben</translation>
    </message>
    <message>
        <source>room on the sleeve</source>
        <translation>Platz auf der Hülse</translation>
    </message>
    <message>
        <source>hangings</source>
        <translation>Hängungen</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>step of the scale</source>
        <translation>Teilschritt der Waage</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Drahtdicke</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>inner width</source>
        <translation>innere Breite</translation>
    </message>
    <message>
        <source>length at rest</source>
        <translation>Ruhelänge</translation>
    </message>
    <message>
        <source>height of the anchor</source>
        <translation>Höhe des Ankers</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>mass of the lead</source>
        <translation>Masse des Riemens</translation>
    </message>
    <message>
        <source>height of the bunch</source>
        <translation>Höhe des Bündels</translation>
    </message>
    <message>
        <source>mass per metre</source>
        <translation>Masse pro Meter</translation>
    </message>
    <message>
        <source>what it shows empty</source>
        <translation>was sie leer zeigt</translation>
    </message>
    <message>
        <source>what is marked on it</source>
        <translation>Aufschrift</translation>
    </message>
    <message>
        <source>how many at once</source>
        <translation>wie viele auf einmal</translation>
    </message>
    <message>
        <source>accuracy of the scale</source>
        <translation>Genauigkeit der Waage</translation>
    </message>
    <message>
        <source>height of the lowest hole</source>
        <translation>Höhe des untersten Lochs</translation>
    </message>
    <message>
        <source>from hole to hole</source>
        <translation>von Loch zu Loch</translation>
    </message>
    <message>
        <source>number of holes</source>
        <translation>Anzahl der Löcher</translation>
    </message>
    <message>
        <source>distance of the anchor</source>
        <translation>Abstand des Ankers</translation>
    </message>
    <message>
        <source>what is pinned on the stack</source>
        <translation>was im Gewichts­block gesteckt ist</translation>
    </message>
    <message>
        <source>thickness of the handle</source>
        <translation>Dicke des Griffs</translation>
    </message>
    <message>
        <source>Up there they help no more. Anchor them higher to help longer.</source>
        <translation>Dort oben helfen sie nicht mehr. Veranker sie höher, dann helfen sie länger.</translation>
    </message>
    <message>
        <source>Below that they add nothing and may slip off. Anchor them lower, or double them.</source>
        <translation>Darunter bringen sie nichts und können abrutschen. Veranker sie tiefer oder nimm sie doppelt.</translation>
    </message>
    <message>
        <source>Below that the chain adds nothing. A shorter lead starts it sooner.</source>
        <translation>Darunter bringt die Kette nichts. Ein kürzerer Riemen lässt sie früher wirken.</translation>
    </message>
    <message>
        <source>Above that it swings and adds no more. A longer lead keeps a link down.</source>
        <translation>Darüber pendelt die Kette und bringt nichts mehr. Ein längerer Riemen hielte ein Glied am Boden.</translation>
    </message>
    <message>
        <source>Bench aid not measured past %1</source>
        <translation>Bankhilfe nicht über %1 hinaus gemessen</translation>
    </message>
    <message>
        <source>Its help beyond is unknown. Read it there too, or say where the chest is.</source>
        <translation>Ihre Hilfe darüber hinaus ist unbekannt. Lies sie auch dort ab, oder sag, wo die Brust ist.</translation>
    </message>
    <message>
        <source>The pull beyond is unknown. Hang more on the band and read its length, or hang it slacker.</source>
        <translation>Der Zug darüber hinaus ist unbekannt. Häng mehr an das Band und lies seine Länge ab, oder häng es lockerer.</translation>
    </message>
    <message>
        <source>Left pulls more, from %1 up</source>
        <translation>Links zieht mehr, ab %1</translation>
    </message>
    <message>
        <source>Right pulls more, from %1 up</source>
        <translation>Rechts zieht mehr, ab %1</translation>
    </message>
    <message>
        <source>By over 2 % of the whole. Hang both sides alike.</source>
        <translation>Um über 2 % des Ganzen. Häng beide Seiten gleich.</translation>
    </message>
    <message>
        <source>It gets lighter from %1 up</source>
        <translation>Ab %1 wird es leichter</translation>
    </message>
    <message>
        <source>Look whether it hangs as you meant.</source>
        <translation>Sieh nach, ob es so hängt, wie du es meinst.</translation>
    </message>
    <message>
        <source>Bands pull the bar forward, from %1 up</source>
        <translation>Bänder ziehen die Stange nach vorn, ab %1</translation>
    </message>
    <message>
        <source>By over 3 % of the whole. Anchor them under the bar.</source>
        <translation>Um über 3 % des Ganzen. Veranker sie unter der Stange.</translation>
    </message>
    <message>
        <source>Bands pull the bar back, from %1 up</source>
        <translation>Bänder ziehen die Stange nach hinten, ab %1</translation>
    </message>
    <message>
        <source>Over the cap from %1 up</source>
        <translation>Ab %1 über der Obergrenze</translation>
    </message>
    <message>
        <source>Do not lift this. Take plates off.</source>
        <translation>Nicht heben. Nimm Scheiben ab.</translation>
    </message>
    <message>
        <source>More than the rack may carry</source>
        <translation>Mehr, als das Rack tragen darf</translation>
    </message>
    <message>
        <source>More than the safeties may carry, from %1 up</source>
        <translation>Mehr, als die Sicherheits­ablagen tragen dürfen, ab %1</translation>
    </message>
    <message>
        <source>More plates than the sleeve holds</source>
        <translation>Mehr Scheiben, als auf die Hülse passen</translation>
    </message>
    <message>
        <source>Do not lift this. Use fewer, heavier plates.</source>
        <translation>Nicht heben. Nimm weniger, schwerere Scheiben.</translation>
    </message>
    <message>
        <source>The anchor of %1 may lift</source>
        <translation>Der Anker von %1 kann abheben</translation>
    </message>
    <message>
        <source>Do not lift this. Up to %1 pull it up, %2 hold it: it takes %3 times the pull. Hold it down with more.</source>
        <translation>Nicht heben. Bis zu %1 ziehen ihn hoch, %2 halten ihn: Nötig ist das %3-Fache des Zugs. Beschwer ihn mit mehr.</translation>
    </message>
    <message>
        <source>hanging %1</source>
        <translation>Hängung %1</translation>
    </message>
    <message>
        <source>reading %1</source>
        <translation>Ablesung %1</translation>
    </message>
    <message>
        <source>something that is not in the kit</source>
        <translation>etwas, das nicht im Material ist</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Still to enter: %1.</source>
        <translation>Noch einzutragen: %1.</translation>
    </message>
    <message>
        <source>Read it at least at two heights, with another mass on it each time.</source>
        <translation>Lies sie mindestens in zwei Höhen ab, jedes Mal mit einer anderen Masse darauf.</translation>
    </message>
    <message>
        <source>Read it at least at two places along its way.</source>
        <translation>Lies sie mindestens an zwei Stellen ihres Wegs ab.</translation>
    </message>
    <message>
        <source>One try tells nothing of its own scatter. Take at least two tries in each condition.</source>
        <translation>Ein Versuch sagt nichts über seine eigene Streuung. Mach in jeder Bedingung mindestens zwei.</translation>
    </message>
    <message>
        <source>Too short a stand to weigh her on. Record again, with a second of standing still first, or allow a short weighing.</source>
        <translation>Zu kurz gestanden, um sie zu wiegen. Zeichne neu auf, mit einer Sekunde ruhigem Stehen davor, oder lass eine kurze Wägung zu.</translation>
    </message>
    <message>
        <source>The record is too short. Record again, from standing still to after the try.</source>
        <translation>Die Aufzeichnung ist zu kurz. Zeichne neu auf, vom ruhigen Stehen bis nach dem Versuch.</translation>
    </message>
    <message>
        <source>There are no numbers in this file. Choose a text file with the force in a column.</source>
        <translation>In dieser Datei stehen keine Zahlen. Wähl eine Textdatei mit der Kraft in einer Spalte.</translation>
    </message>
    <message>
        <source>Hang at least two different masses and read the length of each.</source>
        <translation>Häng mindestens zwei ver­schiedene Massen an und lies jeweils die Länge ab.</translation>
    </message>
    <message>
        <source>Read at the same place as another: %1. Read one of them again.</source>
        <translation>An derselben Stelle abgelesen wie eine andere: %1. Lies eine davon neu ab.</translation>
    </message>
    <message>
        <source>The readings are too alike. Hang a different mass.</source>
        <translation>Die Ablesungen sind zu ähnlich. Häng eine andere Masse an.</translation>
    </message>
    <message>
        <source>Not longer than at rest: %1. Read it again, or the length at rest.</source>
        <translation>Nicht länger als in Ruhe: %1. Lies neu ab, oder die Ruhelänge.</translation>
    </message>
    <message>
        <source>More mass, yet no longer: read the lengths again.</source>
        <translation>Mehr Masse und doch nicht länger: Lies die Längen neu ab.</translation>
    </message>
    <message>
        <source>Out of order: %1. Bottom, sticking zone and top go up.</source>
        <translation>Falsche Reihenfolge: %1. Unten, Sticking-Zone und oben steigen an.</translation>
    </message>
    <message>
        <source>Anchored above means over her top mark, below means under her bottom mark: %1. Enter it again, or turn it round.</source>
        <translation>Oben verankert heißt über ihrer Marke oben, unten heißt unter ihrer Marke unten: %1. Trag es neu ein, oder dreh es um.</translation>
    </message>
    <message>
        <source>More hangs than is here: %1. Measure another, or hang it on one side.</source>
        <translation>Es hängt mehr, als da ist: %1. Miss noch eins, oder häng es auf eine Seite.</translation>
    </message>
    <message>
        <source>Higher up an aid helps less, and here it would help more: %1. Read it again, or leave it out.</source>
        <translation>Weiter oben hilft eine Bankhilfe weniger, und hier würde sie mehr helfen: %1. Lies neu ab, oder lass sie weg.</translation>
    </message>
    <message>
        <source>She did not stay still while she was weighed. Take the try again, with a second of stillness first.</source>
        <translation>Sie blieb beim Wiegen nicht ruhig. Wiederhol den Versuch, mit einer Sekunde Ruhe davor.</translation>
    </message>
    <message>
        <source>There is no flight in this record. Record it again, from standing still to landing.</source>
        <translation>In dieser Aufzeichnung ist kein Flug. Zeichne neu auf, vom ruhigen Stehen bis zur Landung.</translation>
    </message>
    <message>
        <source>There is no pull in this record. Record it again, with a second of stillness before the pull.</source>
        <translation>In dieser Aufzeichnung ist kein Zug. Zeichne neu auf, mit einer Sekunde Ruhe vor dem Zug.</translation>
    </message>
    <message>
        <source>The force fell before it rose, so the try does not count. Pull again, without dropping first.</source>
        <translation>Die Kraft fiel, bevor sie stieg; der Versuch zählt nicht. Zieh noch einmal, ohne vorher nachzugeben.</translation>
    </message>
    <message>
        <source>With the rear foot supported nobody knows what each leg lifts. Compare tests with the foot free.</source>
        <translation>Ist der hintere Fuß abgestützt, weiß niemand, was jedes Bein hebt. Vergleich Tests mit freiem Fuß.</translation>
    </message>
    <message>
        <source>Measured in different ways, so it cannot be compared: %1. Take all three in one way.</source>
        <translation>Verschieden gemessen und nicht vergleichbar: %1. Miss alle drei auf eine Art.</translation>
    </message>
    <message>
        <source>The unit is not said: %1. Say it in the head of the file, N or kN.</source>
        <translation>Die Einheit fehlt: %1. Nenn sie im Kopf der Datei, N oder kN.</translation>
    </message>
    <message>
        <source>Not a number: %1. Enter it again.</source>
        <translation>Keine Zahl: %1. Trag sie neu ein.</translation>
    </message>
    <message>
        <source>This cannot be right: %1. Enter it again.</source>
        <translation>Das kann nicht stimmen: %1. Trag es neu ein.</translation>
    </message>
    <message>
        <source>There is a point already.</source>
        <translation>Ein Komma steht schon da.</translation>
    </message>
    <message>
        <source>Whole numbers only.</source>
        <translation>Nur ganze Zahlen.</translation>
    </message>
    <message>
        <source>Not part of a number.</source>
        <translation>Kein Teil einer Zahl.</translation>
    </message>
    <message>
        <source>Key a number first.</source>
        <translation>Tippe zuerst eine Zahl ein.</translation>
    </message>
    <message>
        <source>Less than %1 %2: read it again.</source>
        <translation>Weniger als %1 %2: Lies neu ab.</translation>
    </message>
    <message>
        <source>More than %1 %2: read it again.</source>
        <translation>Mehr als %1 %2: Lies neu ab.</translation>
    </message>
    <message>
        <source>Chains: before it is ready</source>
        <translation>Ketten: bevor es bereit ist</translation>
    </message>
    <message>
        <source>The plain lift is stable.</source>
        <translation>Die Übung ohne Ketten sitzt.</translation>
    </message>
    <message>
        <source>Last link still down at the top.</source>
        <translation>Oben liegt das letzte Glied noch auf.</translation>
    </message>
    <message>
        <source>Feet clear of chain on the walk-out.</source>
        <translation>Füße beim Zurückgehen frei von der Kette.</translation>
    </message>
    <message>
        <source>Even on both sides, collars on.</source>
        <translation>Auf beiden Seiten gleich, Verschlüsse drauf.</translation>
    </message>
    <message>
        <source>Each pulls up to %1 up on its anchor: it must hold well over that.</source>
        <translation>Jedes zieht mit bis zu %1 an seinem Anker hoch: Er muss deutlich mehr halten.</translation>
    </message>
    <message>
        <source>How hard each pulls up on its anchor is not known: measure it further.</source>
        <translation>Wie stark jedes an seinem Anker zieht, ist nicht bekannt: Miss weiter.</translation>
    </message>
    <message>
        <source>Bands from below: before it is ready</source>
        <translation>Bänder von unten: bevor es bereit ist</translation>
    </message>
    <message>
        <source>No cuts or thin places. Faces out of the band&apos;s line.</source>
        <translation>Keine Schnitte oder dünnen Stellen. Gesichter aus der Zuglinie des Bands.</translation>
    </message>
    <message>
        <source>Release the bands before changing plates.</source>
        <translation>Bänder lösen, bevor Scheiben gewechselt werden.</translation>
    </message>
    <message>
        <source>If it slips or tears she holds %1 at the bottom: safeties in, spotters ready for all of it.</source>
        <translation>Rutscht oder reißt sie, hält die Athletin unten %1: Sicherheits­ablagen rein, Helfer auf alles gefasst.</translation>
    </message>
    <message>
        <source>What she holds at the bottom if it slips or tears is not known: safeties in, spotters ready for all of it.</source>
        <translation>Was die Athletin unten hält, wenn sie rutscht oder reißt, ist nicht bekannt: Sicherheits­ablagen rein, Helfer auf alles gefasst.</translation>
    </message>
    <message>
        <source>Bench aid: before it is ready</source>
        <translation>Bankhilfe: bevor es bereit ist</translation>
    </message>
    <message>
        <source>No cuts, thin places or loose seams; it sits even on both arms.</source>
        <translation>Keine Schnitte, dünnen Stellen oder losen Nähte; sie sitzt an beiden Armen gleich.</translation>
    </message>
    <message>
        <source>Measured as she wears it: on another body it helps otherwise.</source>
        <translation>Gemessen, wie sie getragen wird: An einem anderen Körper hilft sie anders.</translation>
    </message>
    <message>
        <source>If a band slips she holds %1 at the bottom: safeties in.</source>
        <translation>Rutscht ein Band, hält sie unten %1: Sicherheits­ablagen rein.</translation>
    </message>
    <message>
        <source>What she holds at the bottom if a band slips is not known: safeties in.</source>
        <translation>Was sie unten hält, wenn ein Band rutscht, ist nicht bekannt: Sicherheits­ablagen rein.</translation>
    </message>
    <message>
        <source>Bands from above: before it is ready</source>
        <translation>Bänder von oben: bevor es bereit ist</translation>
    </message>
    <message>
        <source>Never strip plates with the bands on.</source>
        <translation>Nie Scheiben abnehmen, solange die Bänder dran sind.</translation>
    </message>
    <message numerus="yes">
        <source>No more than %Ln figures before the point.</source>
        <translation>
            <numerusform>Nur eine Stelle vor dem Komma.</numerusform>
            <numerusform>Nicht mehr als %Ln Stellen vor dem Komma.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No more than %Ln figures after the point.</source>
        <translation>
            <numerusform>Nur eine Stelle nach dem Komma.</numerusform>
            <numerusform>Nicht mehr als %Ln Stellen nach dem Komma.</numerusform>
        </translation>
    </message>
    <message>
        <source>If one side stays on: do not press, ride to the safeties.</source>
        <translation>Bleibt eine Seite hängen: nicht drücken, auf die Sicherheits­ablagen absenken.</translation>
    </message>
    <message>
        <source>Heavier on the way down: before it is ready</source>
        <translation>Schwerer auf dem Weg nach unten: bevor es bereit ist</translation>
    </message>
    <message>
        <source>Rehearsed with empty hooks, or with what is let go left off, until both sides let go together each time.</source>
        <translation>Mit leeren Haken geübt, oder ohne das, was losgelassen wird, bis beide Seiten jedes Mal zugleich loslassen.</translation>
    </message>
    <message>
        <source>A spotter at each end. Safeties in, tried with an empty bar.</source>
        <translation>An jedem Ende ein Helfer. Sicherheits­ablagen drin, mit leerer Stange probiert.</translation>
    </message>
    <message>
        <source>The plain lift is stable, and somebody qualified has cleared her by name. Your local rules come first.</source>
        <translation>Die Übung mit bloßem Eisen ist stabil, und jemand mit Befähigung hat sie namentlich freigegeben. Die Regeln vor Ort gehen vor.</translation>
    </message>
</context>
<context>
    <name>setuptexts</name>
    <message>
        <source>Not known: measure further</source>
        <translation>Nicht bekannt: weiter messen</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 at the bottom, %2 in the sticking zone, %3 at the top</source>
        <translation>%1 unten, %2 in der Sticking-Zone, %3 oben</translation>
    </message>
    <message>
        <source>%1 at the bottom, %2 at the top</source>
        <translation>%1 unten, %2 oben</translation>
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
        <translation>Sticking-Zone %1 bis %2</translation>
    </message>
    <message>
        <source>off the rack %1</source>
        <translation>aus dem Rack %1</translation>
    </message>
    <message>
        <source>work %1 a rep</source>
        <translation>Arbeit %1 pro Wieder­holung</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>band and aid</source>
        <translation>Band und Bankhilfe</translation>
    </message>
    <message>
        <source>aid</source>
        <translation>Bankhilfe</translation>
    </message>
    <message>
        <source>See what forbids it.</source>
        <translation>Sieh nach, was es verbietet.</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>BEREIT</translation>
    </message>
    <message>
        <source>Nothing hangs but iron.</source>
        <translation>Es hängt nur Eisen.</translation>
    </message>
    <message>
        <source>Looked over as it hangs.</source>
        <translation>Durch­gesehen, so wie es hängt.</translation>
    </message>
    <message>
        <source>DO NOT LIFT</source>
        <translation>NICHT HEBEN</translation>
    </message>
    <message>
        <source>Look it over first.</source>
        <translation>Sieh es zuerst durch.</translation>
    </message>
    <message>
        <source>Past what was measured.</source>
        <translation>Über das Gemessene hinaus.</translation>
    </message>
    <message>
        <source>NOT READY</source>
        <translation>NICHT BEREIT</translation>
    </message>
    <message>
        <source>Her bar marks come first</source>
        <translation>Zuerst ihre Stangen­marken</translation>
    </message>
    <message>
        <source>Not known yet</source>
        <translation>Noch nicht bekannt</translation>
    </message>
    <message>
        <source>mean of the path %1, mean of the ends %2</source>
        <translation>Mittel der Bahn %1, Mittel der Enden %2</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>sticking</source>
        <translation>Sticking</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>Out of use: %1</source>
        <translation>Gesperrt: %1</translation>
    </message>
    <message>
        <source>Take another, or look it over and say that it is fit.</source>
        <translation>Nimm ein anderes, oder sieh es durch und sag, dass es in Ordnung ist.</translation>
    </message>
    <message>
        <source>Lent: %1</source>
        <translation>Verliehen: %1</translation>
    </message>
    <message>
        <source>Take another, or say in Kit that it is back.</source>
        <translation>Nimm ein anderes, oder sag unter Material, dass es zurück ist.</translation>
    </message>
    <message>
        <source>%1: not known</source>
        <translation>%1: nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>doubled</source>
        <translation>doppelt</translation>
    </message>
    <message>
        <source>bunched</source>
        <translation>gebündelt</translation>
    </message>
    <message>
        <source>%1, on a lead of %2</source>
        <translation>%1, an einem Riemen von %2</translation>
    </message>
    <message>
        <source>%1, no lead</source>
        <translation>%1, ohne Riemen</translation>
    </message>
    <message>
        <source>one loop</source>
        <translation>eine Schlaufe</translation>
    </message>
    <message>
        <source>from above, %1</source>
        <translation>von oben, %1</translation>
    </message>
    <message>
        <source>anchored at %1</source>
        <translation>verankert bei %1</translation>
    </message>
    <message>
        <source>anchored on the floor</source>
        <translation>verankert am Boden</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3 in front</source>
        <translation>%1, %2, %3 davor</translation>
    </message>
    <message>
        <source>%1, %2, %3 behind</source>
        <translation>%1, %2, %3 dahinter</translation>
    </message>
    <message>
        <source>worn, the chest at %1</source>
        <translation>getragen, die Brust bei %1</translation>
    </message>
    <message>
        <source>worn, the chest at her bottom mark</source>
        <translation>getragen, die Brust bei ihrer Marke unten</translation>
    </message>
    <message>
        <source>one</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>its twin</source>
        <translation>der Zwilling</translation>
    </message>
    <message>
        <source>bare bar</source>
        <translation>leere Stange</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>it hangs already</source>
        <translation>hängt schon so</translation>
    </message>
    <message>
        <source>put on %1, each side</source>
        <translation>%1 auflegen, je Seite</translation>
    </message>
    <message>
        <source>take off %1, each side</source>
        <translation>%1 abnehmen, je Seite</translation>
    </message>
    <message>
        <source>take off %1, put on %2, each side</source>
        <translation>%1 abnehmen, %2 auflegen, je Seite</translation>
    </message>
    <message>
        <source>Measured long ago: %1</source>
        <translation>Vor langer Zeit gemessen: %1</translation>
    </message>
    <message>
        <source>On %1, longer ago than your limit: what is uncertain of its pull counts half as much again. Measure it anew.</source>
        <translation>Am %1, länger her als deine Grenze: Das Unsichere an seinem Zug zählt um die Hälfte mehr. Miss es neu.</translation>
    </message>
    <message>
        <source>Heavier on the way down: its bar is another.</source>
        <translation>Schwerer auf dem Weg nach unten: Dazu gehört eine andere Stange.</translation>
    </message>
    <message>
        <source>Heavier on the way down: for nobody yet.</source>
        <translation>Schwerer auf dem Weg nach unten: noch für niemanden.</translation>
    </message>
    <message>
        <source>Heavier on the way down: not all is known.</source>
        <translation>Schwerer auf dem Weg nach unten: Noch ist nicht alles bekannt.</translation>
    </message>
</context>
<context>
    <name>sledtexts</name>
    <message>
        <source>Friction %1, found with %2 to %3 in all</source>
        <translation>Reibung %1, gemessen mit insgesamt %2 bis %3</translation>
    </message>
    <message>
        <source>%1 N, as much as %2 weigh</source>
        <translation>%1 N, so viel, wie %2 wiegen</translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation>%1 m/s</translation>
    </message>
    <message>
        <source>How fast: not known yet</source>
        <translation>Wie schnell: noch nicht bekannt</translation>
    </message>
    <message>
        <source>Pushed like this it locks: the push presses it down as hard as it moves it. Push lower, or with less on it.</source>
        <translation>So geschoben sitzt er fest: Das Schieben drückt ihn so stark nieder, wie es ihn bewegt. Schieb tiefer an oder mit weniger darauf.</translation>
    </message>
    <message>
        <source>Nobody knows what the sled weighs: measure it in Kit.</source>
        <translation>Niemand weiß, was der Schlitten wiegt: Miss ihn unter Material.</translation>
    </message>
    <message>
        <source>Measure its strap and the height of its hook in Kit, then it is known how steep it pulls.</source>
        <translation>Miss unter Material seinen Gurt und die Höhe seines Hakens, dann ist bekannt, wie steil er zieht.</translation>
    </message>
    <message>
        <source>Three timed runs with different loads make a line; two do not say how sure it is.</source>
        <translation>Drei gestoppte Läufe mit verschiedenen Lasten ergeben eine Gerade; zwei sagen nicht, wie sicher sie ist.</translation>
    </message>
</context>
<context>
    <name>standingtexts</name>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>from %1 until %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>not: %1</source>
        <translation>nicht: %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>not known: a newer app set it</source>
        <translation>nicht bekannt: eine neuere App hat es gesetzt</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>set by a newer app</source>
        <translation>von einer neueren App gesetzt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; lifted: %2</source>
        <translation>%1; aufgehoben: %2</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>lifted</source>
        <translation>aufgehoben</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>over</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1; knowing that she may be under age</source>
        <translation>%1; im Wissen, dass sie vielleicht minderjährig ist</translation>
    </message>
    <message>
        <source>%1; taken back: %2</source>
        <translation>%1; zurück­genommen: %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurück­genommen</translation>
    </message>
    <message>
        <source>The birth year comes first: without it nobody knows whether a guardian has to agree.</source>
        <translation>Zuerst das Geburtsjahr: Ohne es weiß niemand, ob ein Vormund zustimmen muss.</translation>
    </message>
    <message>
        <source>A parent or guardian has to agree first: until then only name, squad and loads are kept.</source>
        <translation>Zuerst muss ein Elternteil oder Vormund zustimmen: Bis dahin werden nur Name, Gruppe und Lasten behalten.</translation>
    </message>
</context>
<context>
    <name>strengthtexts</name>
    <message>
        <source>her %1 alone</source>
        <translation>nur ihre %1</translation>
    </message>
    <message>
        <source>her %1, %2 of it taken off</source>
        <translation>ihre %1, davon %2 abgenommen</translation>
    </message>
    <message>
        <source>her %1 and %2</source>
        <translation>ihre %1 und %2</translation>
    </message>
    <message>
        <source>%1 at the bottom</source>
        <translation>%1 unten</translation>
    </message>
    <message>
        <source>%1 in the sticking zone</source>
        <translation>%1 in der Sticking-Zone</translation>
    </message>
    <message>
        <source>%1 at the top</source>
        <translation>%1 oben</translation>
    </message>
    <message>
        <source>%1 on the mean</source>
        <translation>%1 im Mittel</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>getestet %1</translation>
    </message>
    <message>
        <source>estimated %1</source>
        <translation>geschätzt %1</translation>
    </message>
    <message>
        <source>tried out: %1, the next jump of %2 was too much</source>
        <translation>ausprobiert: %1, der nächste Sprung von %2 war zu viel</translation>
    </message>
    <message>
        <source>tried out: %1, the next jump was too much</source>
        <translation>ausprobiert: %1, der nächste Sprung war zu viel</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, then one missed</source>
        <translation>%1, dann eine verfehlt</translation>
    </message>
    <message>
        <source>%1, reserve not said</source>
        <translation>%1, Reserve nicht gesagt</translation>
    </message>
    <message>
        <source>%1, none in reserve</source>
        <translation>%1, keine in Reserve</translation>
    </message>
    <message>
        <source>%1, %2 in reserve</source>
        <translation>%1, %2 in Reserve</translation>
    </message>
    <message>
        <source>chains</source>
        <translation>Ketten</translation>
    </message>
    <message>
        <source>bands from below</source>
        <translation>Bänder von unten</translation>
    </message>
    <message>
        <source>bands from above</source>
        <translation>Bänder von oben</translation>
    </message>
    <message>
        <source>a bench aid</source>
        <translation>eine Bankhilfe</translation>
    </message>
    <message>
        <source>a machine</source>
        <translation>eine Maschine</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>plain iron</source>
        <translation>bloßes Eisen</translation>
    </message>
    <message>
        <source>as kept on %1: %2</source>
        <translation>wie am %1 behalten: %2</translation>
    </message>
    <message>
        <source>a set-up that was taken out</source>
        <translation>ein herausgenommener Aufbau</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>from %1: a maximum tried out goes before any set</source>
        <translation>aus %1: Ein ausprobiertes Maximum geht jedem Satz vor</translation>
    </message>
    <message>
        <source>from %1: the heaviest that was tried out</source>
        <translation>aus %1: das schwerste, das ausprobiert wurde</translation>
    </message>
    <message>
        <source>from %1: of the day&apos;s sets it shows most even at its lowest</source>
        <translation>aus %1: Von den Sätzen des Tages zeigt er selbst an seinem unteren Ende am meisten</translation>
    </message>
    <message>
        <source>%1. A set of the day shows more than the test: what was tried out was no maximum.</source>
        <translation>%1. Ein Satz des Tages zeigt mehr als der Test: Was ausprobiert wurde, war kein Maximum.</translation>
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
        <translation>nicht getestet</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Nothing has tested it yet. A set of up to 10 reps gives a range; a maximum tried out a narrower one.</source>
        <translation>Noch hat es nichts getestet. Ein Satz bis 10 Wiederholungen gibt eine Spanne, ein ausprobiertes Maximum eine engere.</translation>
    </message>
    <message>
        <source>It was tested only with something hung: percent needs a test with plain iron.</source>
        <translation>Es wurde nur mit etwas Angehängtem getestet: Prozent braucht einen Test mit bloßem Eisen.</translation>
    </message>
    <message>
        <source>Her maximum has her body in it, and this load has not.</source>
        <translation>In ihrem Maximum steckt ihr Körper, in dieser Last nicht.</translation>
    </message>
    <message>
        <source>Known once the pull is.</source>
        <translation>Bekannt, sobald der Zug es ist.</translation>
    </message>
    <message>
        <source>%1 of %2 (%3), %4</source>
        <translation>%1 von %2 (%3), %4</translation>
    </message>
    <message>
        <source>A rep was missed</source>
        <translation>Eine Wiederholung wurde verfehlt</translation>
    </message>
    <message>
        <source>The formulas are made for sets that ended before it: a set with all reps done, or a maximum tried out, would settle it.</source>
        <translation>Die Formeln sind für Sätze gemacht, die davor enden: Ein Satz mit allen Wiederholungen oder ein ausprobiertes Maximum würde es klären.</translation>
    </message>
    <message>
        <source>More than 5 in reserve</source>
        <translation>Mehr als 5 in Reserve</translation>
    </message>
    <message>
        <source>So far from failure nobody can say how many more would go: a harder set would settle it.</source>
        <translation>So weit vom Ende kann niemand sagen, wie viele noch gingen: Ein härterer Satz würde es klären.</translation>
    </message>
    <message>
        <source>No rep was done</source>
        <translation>Keine Wiederholung geschafft</translation>
    </message>
    <message>
        <source>A lighter load, lifted at least once, would settle it.</source>
        <translation>Eine leichtere Last, mindestens einmal gehoben, würde es klären.</translation>
    </message>
    <message>
        <source>More than 10 reps with those in reserve</source>
        <translation>Mehr als 10 Wiederholungen samt Reserve</translation>
    </message>
    <message>
        <source>Past 10 the formulas part company: a heavier set would settle it.</source>
        <translation>Über 10 gehen die Formeln auseinander: Ein schwererer Satz würde es klären.</translation>
    </message>
    <message>
        <source>The jump is not smaller than the load</source>
        <translation>Der Sprung ist nicht kleiner als die Last</translation>
    </message>
    <message>
        <source>Say the smallest step between two loads that were tried.</source>
        <translation>Gib den kleinsten Schritt zwischen zwei versuchten Lasten an.</translation>
    </message>
    <message>
        <source>That load is none</source>
        <translation>Das ist keine Last</translation>
    </message>
    <message>
        <source>What is lifted, the body among it, has to be above nothing.</source>
        <translation>Was gehoben wird, der Körper darin, muss über null liegen.</translation>
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
        <translation>%1 und %2</translation>
    </message>
    <message numerus="yes">
        <source>%n known masses, to %1</source>
        <translation>
            <numerusform>%n bekannte Masse, bis %1</numerusform>
            <numerusform>%n bekannte Massen, bis %1</numerusform>
        </translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nicht gewogen</translation>
    </message>
    <message>
        <source>%1, marked %2</source>
        <translation>%1, Aufschrift %2</translation>
    </message>
    <message>
        <source>%1 for %2 marked %3</source>
        <translation>%1 für %2 mit Aufschrift %3</translation>
    </message>
    <message>
        <source>Good: within %1 up to %2</source>
        <translation>Gut: auf %1 genau bis %2</translation>
    </message>
    <message>
        <source>Not good: %1 too much at %2</source>
        <translation>Nicht gut: %1 zu viel bei %2</translation>
    </message>
    <message>
        <source>Not good: %1 too little at %2</source>
        <translation>Nicht gut: %1 zu wenig bei %2</translation>
    </message>
    <message>
        <source>It shows %1 with nothing on it: set it to zero, or take that off what it reads.</source>
        <translation>Sie zeigt unbelastet %1: Stell sie auf null, oder zieh das von der Ablesung ab.</translation>
    </message>
    <message>
        <source>It shows %1 under nothing with nothing on it: set it to zero, or add that to what it reads.</source>
        <translation>Sie zeigt unbelastet %1 unter null: Stell sie auf null, oder zähl das zur Ablesung dazu.</translation>
    </message>
    <message>
        <source>What is weighed on it counts as up to %1 out.</source>
        <translation>Was damit gewogen wird, gilt als bis zu %1 daneben.</translation>
    </message>
    <message>
        <source>That is more than the scale was checked with: it is known up to %1.</source>
        <translation>Mit so viel wurde die Waage nicht geprüft: Bekannt ist sie bis %1.</translation>
    </message>
    <message>
        <source>Each weighs %1</source>
        <translation>Jede wiegt %1</translation>
    </message>
    <message>
        <source>It weighs %1</source>
        <translation>Sie wiegt %1</translation>
    </message>
    <message>
        <source>Just what is marked on it.</source>
        <translation>Genau, was darauf steht.</translation>
    </message>
    <message>
        <source>Too close to call: %1 off the mark is within what the scale can be wrong.</source>
        <translation>Zu knapp: %1 Abstand zur Aufschrift, so weit kann die Waage daneben­liegen.</translation>
    </message>
    <message>
        <source>Too close to call: %1 off the mark is within the scale&apos;s step; the scale itself is not checked.</source>
        <translation>Zu knapp: %1 Abstand zur Aufschrift liegt im Teilschritt der Waage; die Waage selbst ist nicht geprüft.</translation>
    </message>
    <message>
        <source>%1 more than its mark, by %2</source>
        <translation>%1 mehr als die Aufschrift, um %2</translation>
    </message>
    <message>
        <source>%1 less than its mark, by %2</source>
        <translation>%1 weniger als die Aufschrift, um %2</translation>
    </message>
    <message>
        <source>%1: more than the scale can be wrong.</source>
        <translation>%1: mehr, als die Waage daneben­liegen kann.</translation>
    </message>
    <message>
        <source>%1: more than the scale&apos;s step explains; the scale itself is not checked.</source>
        <translation>%1: mehr, als der Teilschritt der Waage erklärt; die Waage selbst ist nicht geprüft.</translation>
    </message>
    <message>
        <source>%1, weighs %2</source>
        <translation>%1, wiegt %2</translation>
    </message>
    <message>
        <source>1 hole at %1</source>
        <translation>1 Loch bei %1</translation>
    </message>
    <message numerus="yes">
        <source>%n holes, %1 to %2</source>
        <translation>
            <numerusform>%n Loch, %1 bis %2</numerusform>
            <numerusform>%n Löcher, %1 bis %2</numerusform>
        </translation>
    </message>
    <message>
        <source>bands at %1</source>
        <translation>Bänder bei %1</translation>
    </message>
    <message>
        <source>%1 each, marked %2</source>
        <translation>je %1, Aufschrift %2</translation>
    </message>
    <message>
        <source>the least it shows: %1, or %2</source>
        <translation>das Kleinste, was sie zeigt: %1 oder %2</translation>
    </message>
    <message>
        <source>The smallest change the scale shows: %1, or %2.</source>
        <translation>Die kleinste Änderung, die die Waage zeigt: %1 oder %2.</translation>
    </message>
</context>
<context>
    <name>usetexts</name>
    <message>
        <source>Her maximum was not lifted with plain iron: %1</source>
        <translation>Ihr Maximum wurde nicht mit bloßem Eisen gehoben: %1</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate it with plain iron.</source>
        <translation>Es ist vom %1. Teste oder schätze es mit bloßem Eisen.</translation>
    </message>
    <message>
        <source>Her maximum is too old to go by: %1</source>
        <translation>Ihr Maximum ist zu alt, um danach zu gehen: %1</translation>
    </message>
    <message>
        <source>It is of %1. Test or estimate it again.</source>
        <translation>Es ist vom %1. Teste oder schätze es neu.</translation>
    </message>
    <message>
        <source>No maximum of hers is known: %1</source>
        <translation>Kein Maximum von ihr ist bekannt: %1</translation>
    </message>
    <message>
        <source>Test or estimate it first: the cap is a share of it.</source>
        <translation>Teste oder schätze es zuerst: Die Obergrenze ist ein Anteil davon.</translation>
    </message>
    <message>
        <source>Give-or-take counted in, it comes to %1 % of her lowest estimate of %2, and %3 % is your cap.</source>
        <translation>Das Mehr oder Weniger mitgezählt, sind es %1 % ihrer niedrigsten Schätzung (%2), und deine Obergrenze ist %3 %.</translation>
    </message>
    <message>
        <source>%1 would do.</source>
        <translation>%1 ginge.</translation>
    </message>
    <message>
        <source>No load weighed like this would do.</source>
        <translation>Keine so gewogene Last ginge.</translation>
    </message>
    <message>
        <source>It may be over your cap</source>
        <translation>Vielleicht über deiner Obergrenze</translation>
    </message>
    <message>
        <source>%1 Weigh it better, or take a lighter one: %2</source>
        <translation>%1 Genauer wiegen oder etwas Leichteres nehmen: %2</translation>
    </message>
    <message>
        <source>Over your cap</source>
        <translation>Über deiner Obergrenze</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>may use it</source>
        <translation>darf es benutzen</translation>
    </message>
    <message>
        <source>look over first</source>
        <translation>zuerst durchsehen</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>jetzt nicht</translation>
    </message>
    <message>
        <source>Its mass is not known</source>
        <translation>Seine Masse ist nicht bekannt</translation>
    </message>
    <message>
        <source>It may hold gas</source>
        <translation>Es hält vielleicht Gas</translation>
    </message>
    <message>
        <source>Ask whoever brought it. Until it is known to be let off nobody lifts, drops or opens it.</source>
        <translation>Frag, wer es gebracht hat. Bis bekannt ist, dass es abgelassen ist, wird es von niemandem gehoben, fallen gelassen oder geöffnet.</translation>
    </message>
    <message>
        <source>It holds gas</source>
        <translation>Es hält Gas</translation>
    </message>
    <message>
        <source>Whoever owns it lets it off. Nobody else opens it, and nobody drops or lifts it until then.</source>
        <translation>Es lässt ab, wem es gehört. Sonst öffnet es niemand, und bis dahin lässt es niemand fallen und hebt es niemand.</translation>
    </message>
    <message>
        <source>Held against no lift of hers</source>
        <translation>An keiner Übung von ihr gemessen</translation>
    </message>
    <message>
        <source>Say below which lift, and how much of it, such a load may come to; or see for yourself that it suits her.</source>
        <translation>Sag unten, bis zu welcher Übung und wie viel davon so eine Last reichen darf; oder sieh selbst, dass sie für sie passt.</translation>
    </message>
    <message>
        <source>Tried: it does not fit the hand</source>
        <translation>Probiert: passt nicht in die Hand</translation>
    </message>
    <message>
        <source>Take another, or hold it otherwise.</source>
        <translation>Nimm eine andere, oder halte sie anders.</translation>
    </message>
    <message>
        <source>Not tried in the hand</source>
        <translation>Nicht in der Hand probiert</translation>
    </message>
    <message>
        <source>Have it held first. With two hands the little fingers go on the horns.</source>
        <translation>Erst halten lassen. Mit zwei Händen kommen die kleinen Finger an die Hörner.</translation>
    </message>
    <message>
        <source>Noted</source>
        <translation>Vermerkt</translation>
    </message>
    <message>
        <source>Nobody has looked it over</source>
        <translation>Niemand hat ihn durch­gesehen</translation>
    </message>
    <message>
        <source>Look for wire that shows, cuts in the side, and water in it.</source>
        <translation>Nach Draht suchen, der zu sehen ist, nach Schnitten in der Flanke und Wasser darin.</translation>
    </message>
    <message>
        <source>Does she reach the ground?</source>
        <translation>Kommt sie bis zum Boden?</translation>
    </message>
    <message>
        <source>With a flat back and straight arms, hands under the edge. If not, put it on blocks or leave it out.</source>
        <translation>Mit flachem Rücken und gestreckten Armen, Hände unter dem Rand. Wenn nicht, auf Blöcke legen oder weglassen.</translation>
    </message>
    <message>
        <source>the usual cautions</source>
        <translation>die üblichen Hinweise</translation>
    </message>
</context>
<context>
    <name>vaulttexts</name>
    <message>
        <source>One device only, no backup yet</source>
        <translation>Nur ein Gerät, noch keine Sicherung</translation>
    </message>
    <message numerus="yes">
        <source>%n entries that had been kept are missing.</source>
        <translation>
            <numerusform>%n Eintrag fehlt, der schon behalten war.</numerusform>
            <numerusform>%n Einträge fehlen, die schon behalten waren.</numerusform>
        </translation>
    </message>
    <message>
        <source>An older data file was put back, or the storage lost its newest part. Look through what you kept last, and enter again what is not there.</source>
        <translation>Eine ältere Datendatei wurde zurück­gelegt, oder der Speicher hat ihren neuesten Teil verloren. Sieh durch, was du zuletzt behalten hast, und trag neu ein, was nicht da ist.</translation>
    </message>
    <message>
        <source>The list that shows missing entries is gone.</source>
        <translation>Die Liste, die fehlende Einträge zeigt, ist weg.</translation>
    </message>
    <message>
        <source>It has been written anew, and whether anything was missing before cannot be told. Look through what you kept last.</source>
        <translation>Sie wurde neu geschrieben, und ob vorher etwas fehlte, lässt sich nicht sagen. Sieh durch, was du zuletzt behalten hast.</translation>
    </message>
    <message>
        <source>This vault comes from another install.</source>
        <translation>Dieser Tresor kommt aus einer anderen Instal­lation.</translation>
    </message>
    <message>
        <source>From now on it writes as a device of its own. Do not go on with the old copy as well: each would miss what the other keeps.</source>
        <translation>Ab jetzt schreibt er als eigenes Gerät. Mach nicht auch mit der alten Kopie weiter: Jedem würde fehlen, was das andere behält.</translation>
    </message>
    <message>
        <source>One copy of the key file was damaged.</source>
        <translation>Eine Kopie der Schlüssel­datei war beschädigt.</translation>
    </message>
    <message>
        <source>The other was whole, and the damaged one has been written anew. If this comes again the storage is failing: copy the vault&apos;s folder to another disk.</source>
        <translation>Die andere war heil, und die beschädigte wurde neu geschrieben. Kommt das wieder, versagt der Speicher: Kopier den Ordner des Tresors auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>Something may carry the vault&apos;s folder to other devices.</source>
        <translation>Vielleicht überträgt etwas den Ordner des Tresors auf andere Geräte.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Where you chose what is carried, leave the vault&apos;s folder out.</source>
        <translation>Zwei Geräte, die in einen Tresor schreiben, würden ihn zerstören. Lass den Ordner des Tresors dort weg, wo du gewählt hast, was übertragen wird.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Where you chose what is carried, leave this folder out: %1</source>
        <translation>Zwei Geräte, die in einen Tresor schreiben, würden ihn zerstören. Lass dort, wo du gewählt hast, was übertragen wird, diesen Ordner weg: %1</translation>
    </message>
    <message>
        <source>This device is as good as full.</source>
        <translation>Dieses Gerät ist so gut wie voll.</translation>
    </message>
    <message>
        <source>Free some space now, so that what you enter next can be kept.</source>
        <translation>Mach jetzt Platz, damit dein nächster Eintrag behalten werden kann.</translation>
    </message>
    <message>
        <source>Half-typed forms of a newer app are here: %1.</source>
        <translation>Hier sind halb eingegebene Formulare einer neueren App: %1.</translation>
    </message>
    <message>
        <source>They stay as they are. Update the app to go on with them.</source>
        <translation>Sie bleiben, wie sie sind. Aktuali­siere die App, um damit weiter­zumachen.</translation>
    </message>
    <message>
        <source>The vault&apos;s key file is missing.</source>
        <translation>Die Schlüssel­datei des Tresors fehlt.</translation>
    </message>
    <message>
        <source>Put vault.key or vault.key.2 back into the vault&apos;s folder, then try again.</source>
        <translation>Leg vault.key oder vault.key.2 in den Ordner des Tresors zurück, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Both copies of the key file are damaged.</source>
        <translation>Beide Kopien der Schlüssel­datei sind beschädigt.</translation>
    </message>
    <message>
        <source>No passphrase can open the vault as it is. Put an earlier vault.key back into its folder, then try again.</source>
        <translation>So, wie der Tresor ist, kann ihn keine Passphrase öffnen. Leg eine frühere vault.key in seinen Ordner zurück, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The key file was not written by this app.</source>
        <translation>Die Schlüssel­datei wurde nicht von dieser App geschrieben.</translation>
    </message>
    <message>
        <source>Somebody may have changed it. Put your own vault.key back into the folder, then try again.</source>
        <translation>Vielleicht hat jemand sie verändert. Leg deine eigene vault.key in den Ordner zurück, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Key files of two vaults lie in one folder.</source>
        <translation>In einem Ordner liegen die Schlüssel­dateien zweier Tresore.</translation>
    </message>
    <message>
        <source>vault.key and vault.key.2 do not belong together. Move the wrong one away, then try again.</source>
        <translation>vault.key und vault.key.2 gehören nicht zusammen. Leg die falsche woandershin, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>A newer version of the app wrote this vault.</source>
        <translation>Eine neuere Version der App hat diesen Tresor geschrieben.</translation>
    </message>
    <message>
        <source>It is untouched. Update the app, then open it again.</source>
        <translation>Er ist unberührt. Aktuali­siere die App, dann öffne ihn noch einmal.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file is missing.</source>
        <translation>Die Datendatei des Tresors fehlt.</translation>
    </message>
    <message>
        <source>The key is there, the file it opens is not. Put the vault&apos;s files back into their folder, then try again.</source>
        <translation>Der Schlüssel ist da, die Datei, die er öffnet, nicht. Leg die Dateien des Tresors in ihren Ordner zurück, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file is empty.</source>
        <translation>Die Datendatei des Tresors ist leer.</translation>
    </message>
    <message>
        <source>The storage has lost what was in it, and nothing is written to it. Put an earlier copy in its place, then try again.</source>
        <translation>Der Speicher hat verloren, was darin war, und es wird nichts hinein­geschrieben. Leg eine frühere Kopie an ihre Stelle, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The vault&apos;s data file ends too soon.</source>
        <translation>Die Datendatei des Tresors endet zu früh.</translation>
    </message>
    <message>
        <source>Part of it is gone, and nothing is written to it. Put an earlier copy in its place, then try again.</source>
        <translation>Ein Teil davon ist weg, und es wird nichts hinein­geschrieben. Leg eine frühere Kopie an ihre Stelle, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The data file in the vault&apos;s folder is not sealed.</source>
        <translation>Die Datendatei im Ordner des Tresors ist nicht versiegelt.</translation>
    </message>
    <message>
        <source>It is none of ours, and is left alone. Put the vault&apos;s own file in its place, then try again.</source>
        <translation>Sie ist keine von unseren und bleibt un­angetastet. Leg die eigene Datei des Tresors an ihre Stelle, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The data file was written by something else.</source>
        <translation>Die Datendatei wurde von etwas anderem geschrieben.</translation>
    </message>
    <message>
        <source>It is left alone. Put the vault&apos;s own file in its place, then try again.</source>
        <translation>Sie bleibt un­angetastet. Leg die eigene Datei des Tresors an ihre Stelle, dann versuch es noch einmal.</translation>
    </message>
    <message numerus="yes">
        <source>The vault&apos;s data file is damaged: %n entries cannot be read.</source>
        <translation>
            <numerusform>Die Datendatei des Tresors ist beschädigt: %n Eintrag ist nicht lesbar.</numerusform>
            <numerusform>Die Datendatei des Tresors ist beschädigt: %n Einträge sind nicht lesbar.</numerusform>
        </translation>
    </message>
    <message>
        <source>The vault&apos;s data file is damaged.</source>
        <translation>Die Datendatei des Tresors ist beschädigt.</translation>
    </message>
    <message>
        <source>Your passphrase is right. Nothing is written to the file. Keep the folder as it is, and put an earlier copy in its place.</source>
        <translation>Deine Passphrase stimmt. In die Datei wird nichts geschrieben. Heb den Ordner auf, wie er ist, und leg eine frühere Kopie an seine Stelle.</translation>
    </message>
    <message>
        <source>The vault could not be brought up to date.</source>
        <translation>Der Tresor ließ sich nicht auf den neuen Stand bringen.</translation>
    </message>
    <message>
        <source>It stands as it was. Free some space and try again, or open it with the app you had before.</source>
        <translation>Er ist, wie er war. Mach Platz und versuch es noch einmal, oder öffne ihn mit der App, die du vorher hattest.</translation>
    </message>
    <message>
        <source>The app&apos;s database does not do what it should.</source>
        <translation>Die Datenbank der App tut nicht, was sie soll.</translation>
    </message>
    <message>
        <source>Nothing has been touched. Install the app anew, then try again.</source>
        <translation>Es wurde nichts angerührt. Installier die App neu, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>That does not open the vault.</source>
        <translation>Das öffnet den Tresor nicht.</translation>
    </message>
    <message>
        <source>The vault itself is whole. Look out for capitals and spaces, and type it again.</source>
        <translation>Der Tresor selbst ist heil. Achte auf Groß­buchstaben und Leerzeichen und gib es neu ein.</translation>
    </message>
    <message>
        <source>This vault has no such way in.</source>
        <translation>Diesen Zugang hat der Tresor nicht.</translation>
    </message>
    <message>
        <source>Use the passphrase, or else the recovery code.</source>
        <translation>Nimm die Passphrase oder sonst den Rettungs­code.</translation>
    </message>
    <message>
        <source>That cannot be a passphrase or recovery code of this vault.</source>
        <translation>Das kann weder Passphrase noch Rettungs­code dieses Tresors sein.</translation>
    </message>
    <message>
        <source>It is too long, or not complete. Nothing was cut off: type it again.</source>
        <translation>Es ist zu lang oder nicht vollständig. Ab­geschnitten wurde nichts: Gib es neu ein.</translation>
    </message>
    <message>
        <source>There is no memory left to make the key.</source>
        <translation>Der Arbeits­speicher reicht nicht mehr, um den Schlüssel zu erzeugen.</translation>
    </message>
    <message>
        <source>Close other programs, then try again.</source>
        <translation>Schließ andere Programme, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>There is no vault here any more.</source>
        <translation>Hier ist kein Tresor mehr.</translation>
    </message>
    <message>
        <source>If you know where its folder went, put it back and try again. Otherwise make a new one.</source>
        <translation>Wenn du weißt, wo sein Ordner hingekommen ist, leg ihn zurück und versuch es noch einmal. Sonst leg einen neuen Tresor an.</translation>
    </message>
    <message>
        <source>There is a vault here already.</source>
        <translation>Hier ist schon ein Tresor.</translation>
    </message>
    <message>
        <source>No second one was made. Try again, and unlock the one that is there.</source>
        <translation>Ein zweiter wurde nicht angelegt. Versuch es noch einmal und öffne den, der da ist.</translation>
    </message>
    <message>
        <source>The vault&apos;s folder is carried to other devices.</source>
        <translation>Der Ordner des Tresors wird auf andere Geräte übertragen.</translation>
    </message>
    <message>
        <source>Two devices writing into one vault would ruin it. Move the folder to a place that stays here, then try again.</source>
        <translation>Zwei Geräte, die in einen Tresor schreiben, würden ihn zerstören. Leg den Ordner an einen Platz, der hier bleibt, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>The vault is open already.</source>
        <translation>Der Tresor ist schon offen.</translation>
    </message>
    <message>
        <source>Steelyard runs a second time on this device. Close the other window, then try again.</source>
        <translation>Steelyard läuft auf diesem Gerät ein zweites Mal. Schließ das andere Fenster, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Nothing can be written into the vault&apos;s folder.</source>
        <translation>In den Ordner des Tresors lässt sich nichts schreiben.</translation>
    </message>
    <message>
        <source>Whatever you enter could not be kept. Make the folder writable, then try again.</source>
        <translation>Was du einträgst, könnte nicht behalten werden. Mach den Ordner be­schreibbar, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Not saved: %1 MB needed, %2 MB free.</source>
        <translation>Nicht gespeichert: %1 MB nötig, %2 MB frei.</translation>
    </message>
    <message>
        <source>Not saved: this device is full.</source>
        <translation>Nicht gespeichert: Dieses Gerät ist voll.</translation>
    </message>
    <message>
        <source>Your entry is still on the page. Free some space, then do it again.</source>
        <translation>Dein Eintrag steht noch auf der Seite. Mach Platz, dann mach es noch einmal.</translation>
    </message>
    <message>
        <source>Not saved: the storage gave an error.</source>
        <translation>Nicht gespeichert: Der Speicher hat einen Fehler gemeldet.</translation>
    </message>
    <message>
        <source>Your entry is still on the page, and nothing kept before is gone. Do it again.</source>
        <translation>Dein Eintrag steht noch auf der Seite, und nichts, was schon behalten war, ist weg. Mach es noch einmal.</translation>
    </message>
    <message>
        <source>The storage gave an error while reading.</source>
        <translation>Der Speicher hat beim Lesen einen Fehler gemeldet.</translation>
    </message>
    <message>
        <source>Nothing has been changed. Try again; if it comes back, copy the vault&apos;s folder to another disk.</source>
        <translation>Es wurde nichts geändert. Versuch es noch einmal; kommt es wieder, kopier den Ordner des Tresors auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>Not saved: the vault is locked.</source>
        <translation>Nicht gespeichert: Der Tresor ist gesperrt.</translation>
    </message>
    <message>
        <source>Unlock it, then do it again.</source>
        <translation>Öffne ihn, dann mach es noch einmal.</translation>
    </message>
    <message>
        <source>A vault is open here already.</source>
        <translation>Hier ist schon ein Tresor offen.</translation>
    </message>
    <message>
        <source>Lock it first, then try again.</source>
        <translation>Sperr ihn zuerst, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Not saved: that is too long.</source>
        <translation>Nicht gespeichert: Das ist zu lang.</translation>
    </message>
    <message>
        <source>Your entry is still on the page. Make the note shorter, then do it again.</source>
        <translation>Dein Eintrag steht noch auf der Seite. Kürze die Notiz, dann mach es noch einmal.</translation>
    </message>
    <message>
        <source>Not saved: this athlete has been erased.</source>
        <translation>Nicht gespeichert: Diese Athletin wurde gelöscht.</translation>
    </message>
    <message>
        <source>Nothing more is written about somebody erased. Add the person anew.</source>
        <translation>Über Gelöschte wird nichts mehr geschrieben. Nimm die Person neu auf.</translation>
    </message>
    <message>
        <source>This is no example: it is somebody&apos;s own vault.</source>
        <translation>Das ist kein Beispiel: Dieser Tresor gehört jemandem.</translation>
    </message>
    <message>
        <source>Nothing was removed: only an example can be taken away.</source>
        <translation>Es wurde nichts entfernt: Nur ein Beispiel lässt sich entfernen.</translation>
    </message>
    <message>
        <source>Something more urgent came between.</source>
        <translation>Etwas Dringen­deres kam dazwischen.</translation>
    </message>
    <message>
        <source>Nothing is lost. Do it again.</source>
        <translation>Es ist nichts verloren. Mach es noch einmal.</translation>
    </message>
    <message>
        <source>The recovery code is not complete.</source>
        <translation>Der Rettungs­code ist nicht vollständig.</translation>
    </message>
    <message>
        <source>It has five groups. Type on where the first one is missing.</source>
        <translation>Er hat fünf Gruppen. Gib dort weiter ein, wo die erste fehlt.</translation>
    </message>
    <message>
        <source>A group of the recovery code has a mistake.</source>
        <translation>In einer Gruppe des Rettungs­codes ist ein Fehler.</translation>
    </message>
    <message>
        <source>Compare each group with your paper, and put right the one that differs.</source>
        <translation>Vergleich jede Gruppe mit deinem Papier und berichtige die, die abweicht.</translation>
    </message>
    <message>
        <source>The vault is locked. The app could not start anew.</source>
        <translation>Der Tresor ist gesperrt. Die App konnte nicht neu starten.</translation>
    </message>
    <message>
        <source>Close this window: until you do, names may still be in this device&apos;s memory.</source>
        <translation>Schließ dieses Fenster: Bis dahin können noch Namen im Arbeits­speicher dieses Geräts sein.</translation>
    </message>
</context>
<context>
    <name>venuetexts</name>
    <message>
        <source>%1, was due back on %2</source>
        <translation>%1, sollte am %2 zurück sein</translation>
    </message>
    <message>
        <source>%1, back by %2</source>
        <translation>%1, zurück bis %2</translation>
    </message>
    <message>
        <source>borrowed from %1</source>
        <translation>geliehen von %1</translation>
    </message>
    <message>
        <source>lent to %1</source>
        <translation>verliehen an %1</translation>
    </message>
    <message>
        <source>hangs</source>
        <translation>hängt</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>both hang</source>
        <translation>beide hängen</translation>
    </message>
    <message>
        <source>one free</source>
        <translation>eins frei</translation>
    </message>
    <message>
        <source>both free</source>
        <translation>beide frei</translation>
    </message>
</context>
</TS>
