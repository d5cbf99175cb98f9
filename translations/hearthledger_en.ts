<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Collecting</name>
    <message numerus="yes">
        <source>%n record(s). How?</source>
        <translation>
            <numerusform>%n record. How?</numerusform>
            <numerusform>%n records. How?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) sent to the printer.</source>
        <translation>
            <numerusform>%n record sent to the printer.</numerusform>
            <numerusform>%n records sent to the printer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) written.</source>
        <translation>
            <numerusform>%n record written.</numerusform>
            <numerusform>%n records written.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Exporting</name>
    <message numerus="yes">
        <source>%n entries written to %1, each a file.</source>
        <translation>
            <numerusform>%n entry written to %1, as a file.</numerusform>
            <numerusform>%n entries written to %1, each a file.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries written to %1.</source>
        <translation>
            <numerusform>%n entry written to %1.</numerusform>
            <numerusform>%n entries written to %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Importing</name>
    <message numerus="yes">
        <source>%n new premises</source>
        <translation>
            <numerusform>%n new premises</numerusform>
            <numerusform>%n new premises</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n premises filled up</source>
        <translation>
            <numerusform>%n premises filled up</numerusform>
            <numerusform>%n premises filled up</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new people</source>
        <translation>
            <numerusform>%n new person</numerusform>
            <numerusform>%n new people</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new appliances</source>
        <translation>
            <numerusform>%n new appliance</numerusform>
            <numerusform>%n new appliances</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n earlier checks</source>
        <translation>
            <numerusform>%n earlier check</numerusform>
            <numerusform>%n earlier checks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows set aside</source>
        <translation>
            <numerusform>%n row set aside</numerusform>
            <numerusform>%n rows set aside</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows left out</source>
        <translation>
            <numerusform>%n row left out</numerusform>
            <numerusform>%n rows left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rows that can&apos;t be taken</source>
        <translation>
            <numerusform>%n row that can&apos;t be taken</numerusform>
            <numerusform>%n rows that can&apos;t be taken</numerusform>
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
    <name>Words</name>
    <message numerus="yes">
        <source>Calibration runs out in %n day(s), on %1. It counts for this test.</source>
        <translation>
            <numerusform>Calibration runs out in %n day, on %1. It counts for this test.</numerusform>
            <numerusform>Calibration runs out in %n days, on %1. It counts for this test.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait(s) for a signature.</source>
        <translation>
            <numerusform>%n record waits for a signature.</numerusform>
            <numerusform>%n records wait for a signature.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Key %1, %n record(s) signed. Fingerprint: %2</source>
        <translation>
            <numerusform>Key %1, %n record signed. Fingerprint: %2</numerusform>
            <numerusform>Key %1, %n records signed. Fingerprint: %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::firm::SigningPart</name>
    <message numerus="yes">
        <source>%n record(s) signed.</source>
        <translation>
            <numerusform>%n record signed.</numerusform>
            <numerusform>%n records signed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::premises::ImportAssistant</name>
    <message numerus="yes">
        <source>%n row(s) were not taken. They can be written to a file of their own, put right there and taken over later.</source>
        <translation>
            <numerusform>%n row was not taken. It can be written to a file of its own, put right there and taken over later.</numerusform>
            <numerusform>%n rows were not taken. They can be written to a file of their own, put right there and taken over later.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::premises::YearTexts</name>
    <message numerus="yes">
        <source>%1: %n reading(s) in another unit are not compared.</source>
        <translation>
            <numerusform>%1: %n reading in another unit is not compared.</numerusform>
            <numerusform>%1: %n readings in another unit are not compared.</numerusform>
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
<context>
    <name>hearth::ui::due::DueText</name>
    <message numerus="yes">
        <source>%n day(s) overdue</source>
        <translation>
            <numerusform>%n day overdue</numerusform>
            <numerusform>%n days overdue</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>in %n day</numerusform>
            <numerusform>in %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::ActionPage</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::BookPage</name>
    <message numerus="yes">
        <source>%n booked for %1.</source>
        <translation>
            <numerusform>%n booked for %1.</numerusform>
            <numerusform>%n booked for %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::CopyPage</name>
    <message numerus="yes">
        <source>%n premises made. Ctrl+Z takes them back.</source>
        <translation>
            <numerusform>%n premises made. Ctrl+Z takes it back.</numerusform>
            <numerusform>%n premises made. Ctrl+Z takes them back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n premises: %1 to %2.</source>
        <translation>
            <numerusform>%n premises: %1 to %2.</numerusform>
            <numerusform>%n premises: %1 to %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::DutiesPage</name>
    <message numerus="yes">
        <source>%n day(s) overdue</source>
        <translation>
            <numerusform>%n day overdue</numerusform>
            <numerusform>%n days overdue</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::shell::OverdueNews</name>
    <message numerus="yes">
        <source>%n check(s) turned overdue since %1.</source>
        <translation>
            <numerusform>%n check turned overdue since %1.</numerusform>
            <numerusform>%n checks turned overdue since %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::DuePlace</name>
    <message numerus="yes">
        <source>%n premises written.</source>
        <translation>
            <numerusform>%n premises written.</numerusform>
            <numerusform>%n premises written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n premises chosen. What you do next is done for all of them.</source>
        <translation>
            <numerusform>%n premises chosen. What you do next is done for all of them.</numerusform>
            <numerusform>%n premises chosen. What you do next is done for all of them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::due::RemindPage</name>
    <message numerus="yes">
        <source>%n booked among them.</source>
        <translation>
            <numerusform>%n of these is booked.</numerusform>
            <numerusform>%n of these are booked.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n booked, left out.</source>
        <translation>
            <numerusform>%n is booked and left out.</numerusform>
            <numerusform>%n are booked and left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s)</source>
        <translation>
            <numerusform>%n letter</numerusform>
            <numerusform>%n letters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) printed and kept.</source>
        <translation>
            <numerusform>%n letter printed and kept.</numerusform>
            <numerusform>%n letters printed and kept.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) written and kept.</source>
        <translation>
            <numerusform>%n letter written and kept.</numerusform>
            <numerusform>%n letters written and kept.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mail(s)</source>
        <translation>
            <numerusform>%n mail</numerusform>
            <numerusform>%n mails</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mail(s) begun and kept. Send them in your mail program.</source>
        <translation>
            <numerusform>%n mail begun and kept. Send it in your mail program.</numerusform>
            <numerusform>%n mails begun and kept. Send them in your mail program.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mail(s) will be opened one after the other in your mail program.</source>
        <translation>
            <numerusform>%n mail will be opened in your mail program.</numerusform>
            <numerusform>%n mails will be opened one after the other in your mail program.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not sent</source>
        <translation>
            <numerusform>%n not sent</numerusform>
            <numerusform>%n not sent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sent before</source>
        <translation>
            <numerusform>%n sent before</numerusform>
            <numerusform>%n sent before</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::gauge::LeftRecordings</name>
    <message numerus="yes">
        <source>A recording was left: %1, begun %2, %n reading(s).</source>
        <translation>
            <numerusform>A recording was left: %1, begun %2, %n reading.</numerusform>
            <numerusform>A recording was left: %1, begun %2, %n readings.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Beside it %1 was recorded, %n reading(s).</source>
        <translation>
            <numerusform>Beside it %1 was recorded, %n reading.</numerusform>
            <numerusform>Beside it %1 was recorded, %n readings.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>hearth::ui::visit::RoomTraceArea</name>
    <message numerus="yes">
        <source>%n reading(s) put into the series.</source>
        <translation>
            <numerusform>%n reading put into the series.</numerusform>
            <numerusform>%n readings put into the series.</numerusform>
        </translation>
    </message>
</context>
</TS>
