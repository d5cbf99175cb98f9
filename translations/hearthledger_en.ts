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
<context>
    <name>hearth::ui::firm::InstrumentsPart</name>
    <message numerus="yes">
        <source>calibration due in %n day(s)</source>
        <translation>
            <numerusform>calibration due in %n day</numerusform>
            <numerusform>calibration due in %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::premises::PremisesPlace</name>
    <message numerus="yes">
        <source>%n open visit(s)</source>
        <translation>
            <numerusform>%n open visit</numerusform>
            <numerusform>%n open visits</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::shell::AttachmentsPart</name>
    <message numerus="yes">
        <source>%n added. Ctrl+Z takes the last one away again.</source>
        <translation>
            <numerusform>%n added. Ctrl+Z takes it away again.</numerusform>
            <numerusform>%n added. Ctrl+Z takes the last one away again.</numerusform>
        </translation>
    </message>
</context>
</TS>
