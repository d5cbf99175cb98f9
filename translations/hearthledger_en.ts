<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
