<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AlongView</name>
    <message numerus="yes">
        <source>%n come along</source>
        <translation>
            <numerusform>%n comes along</numerusform>
            <numerusform>%n come along</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n go back</source>
        <translation>
            <numerusform>%n goes back</numerusform>
            <numerusform>%n go back</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BarEditor</name>
    <message numerus="yes">
        <source>%n plates, weighed: %1 each</source>
        <translation>
            <numerusform>%n plate, weighed: %1 each</numerusform>
            <numerusform>%n plates, weighed: %1 each</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n plates</source>
        <translation>
            <numerusform>%n plate</numerusform>
            <numerusform>%n plates</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyListView</name>
    <message numerus="yes">
        <source>%n things, still to be measured</source>
        <translation>
            <numerusform>%n thing, still to be measured</numerusform>
            <numerusform>%n things, still to be measured</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GateForm</name>
    <message numerus="yes">
        <source>%n weeks</source>
        <translation>
            <numerusform>%n week</numerusform>
            <numerusform>%n weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>IronEditor</name>
    <message numerus="yes">
        <source>%n plates of %1</source>
        <translation>
            <numerusform>%n plate of %1</numerusform>
            <numerusform>%n plates of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MarksEditor</name>
    <message numerus="yes">
        <source>%1 has %n holes, and the lowest is 1.</source>
        <translation>
            <numerusform>%1 has %n hole, and the lowest is 1.</numerusform>
            <numerusform>%1 has %n holes, and the lowest is 1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PassphrasePage</name>
    <message numerus="yes">
        <source>%n characters or more; a sentence is easiest</source>
        <translation>
            <numerusform>%n character or more; a sentence is easiest</numerusform>
            <numerusform>%n characters or more; a sentence is easiest</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PreferencesPage</name>
    <message numerus="yes">
        <source>%n of your own</source>
        <translation>
            <numerusform>%n of your own</numerusform>
            <numerusform>%n of your own</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RackEditor</name>
    <message numerus="yes">
        <source>Rack, %n holes</source>
        <translation>
            <numerusform>Rack, %n hole</numerusform>
            <numerusform>Rack, %n holes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SecretEntry</name>
    <message numerus="yes">
        <source>%n characters</source>
        <translation>
            <numerusform>%n character</numerusform>
            <numerusform>%n characters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StandingView</name>
    <message numerus="yes">
        <source>%n hold</source>
        <translation>
            <numerusform>%n holds</numerusform>
            <numerusform>%n hold</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VaultMaker</name>
    <message numerus="yes">
        <source>At least %n characters: there are %1.</source>
        <translation>
            <numerusform>At least %n character: there are %1.</numerusform>
            <numerusform>At least %n characters: there are %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>askingtexts</name>
    <message numerus="yes">
        <source>%Ln pulls</source>
        <translation>
            <numerusform>%Ln pull</numerusform>
            <numerusform>%Ln pulls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln heights</source>
        <translation>
            <numerusform>%Ln height</numerusform>
            <numerusform>%Ln heights</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>itemorigintexts</name>
    <message numerus="yes">
        <source>%n readings</source>
        <translation>
            <numerusform>%n reading</numerusform>
            <numerusform>%n readings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>limittexts</name>
    <message numerus="yes">
        <source>%n days</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n years</source>
        <translation>
            <numerusform>%n year</numerusform>
            <numerusform>%n years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>measuretexts</name>
    <message numerus="yes">
        <source>Where the shade is wide, %n readings cannot yet tell their own scatter from the curve: one more narrows it most.</source>
        <translation>
            <numerusform>Where the shade is wide, %n reading cannot yet tell their own scatter from the curve: one more narrows it most.</numerusform>
            <numerusform>Where the shade is wide, %n readings cannot yet tell their own scatter from the curve: one more narrows it most.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n days</source>
        <translation>
            <numerusform>measured %1, due tomorrow</numerusform>
            <numerusform>measured %1, due in %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>measured %1, due in %n weeks</source>
        <translation>
            <numerusform>measured %1, due in %n week</numerusform>
            <numerusform>measured %1, due in %n weeks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>saidtexts</name>
    <message numerus="yes">
        <source>%n hangings</source>
        <translation>
            <numerusform>%n hanging</numerusform>
            <numerusform>%n hangings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n heights</source>
        <translation>
            <numerusform>%n height</numerusform>
            <numerusform>%n heights</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n places, by its pull</source>
        <translation>
            <numerusform>%n place, by its pull</numerusform>
            <numerusform>%n places, by its pull</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n angles, by its radius</source>
        <translation>
            <numerusform>%n angle, by its radius</numerusform>
            <numerusform>%n angles, by its radius</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days old</source>
        <translation>
            <numerusform>%n day old</numerusform>
            <numerusform>%n days old</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weeks old</source>
        <translation>
            <numerusform>%n week old</numerusform>
            <numerusform>%n weeks old</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n months old</source>
        <translation>
            <numerusform>%n month old</numerusform>
            <numerusform>%n months old</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n years old</source>
        <translation>
            <numerusform>%n year old</numerusform>
            <numerusform>%n years old</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message numerus="yes">
        <source>No more than %Ln figures before the point.</source>
        <translation>
            <numerusform>One figure before the point, no more.</numerusform>
            <numerusform>No more than %Ln figures before the point.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No more than %Ln figures after the point.</source>
        <translation>
            <numerusform>One figure after the point, no more.</numerusform>
            <numerusform>No more than %Ln figures after the point.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tooltexts</name>
    <message numerus="yes">
        <source>%n known masses, to %1</source>
        <translation>
            <numerusform>%n known mass, %1</numerusform>
            <numerusform>%n known masses, to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n holes, %1 to %2</source>
        <translation>
            <numerusform>%n hole, %1 to %2</numerusform>
            <numerusform>%n holes, %1 to %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>vaulttexts</name>
    <message numerus="yes">
        <source>%n entries that had been kept are missing.</source>
        <translation>
            <numerusform>%n entry that had been kept is missing.</numerusform>
            <numerusform>%n entries that had been kept are missing.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The vault&apos;s data file is damaged: %n entries cannot be read.</source>
        <translation>
            <numerusform>The vault&apos;s data file is damaged: %n entry cannot be read.</numerusform>
            <numerusform>The vault&apos;s data file is damaged: %n entries cannot be read.</numerusform>
        </translation>
    </message>
</context>
</TS>
