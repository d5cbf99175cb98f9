<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>RecordsPart</name>
    <message numerus="yes">
        <source>%n thing(s) still missing: Enter on a line goes there.</source>
        <translation>
            <numerusform>%n thing still missing: Enter on its line goes there.</numerusform>
            <numerusform>%n things still missing: Enter on a line goes there.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) are missing before it can be issued.</source>
        <translation>
            <numerusform>%n thing is missing before it can be issued.</numerusform>
            <numerusform>%n things are missing before it can be issued.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VisitsPlace</name>
    <message numerus="yes">
        <source>%n record(s)</source>
        <translation>
            <numerusform>%n record</numerusform>
            <numerusform>%n records</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>Calibration runs out in %n day(s), on %1. It counts for this test.</source>
        <translation>
            <numerusform>Calibration runs out in %n day, on %1. It counts for this test.</numerusform>
            <numerusform>Calibration runs out in %n days, on %1. It counts for this test.</numerusform>
        </translation>
    </message>
</context>
</TS>
