// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/sample_documents.h"

#include "core/record/pairing.h"

#include <algorithm>
#include <type_traits>

namespace hearth::testing {

namespace {

using namespace record;
using rulebook::Outcome;

Document frame() {
    Document document;
    document.kind = "tightness_and_purge";
    document.title = "Gas tightness and purge record";
    document.subtitle = "IGEM/UP/1B Edition 4, small installations";
    document.firm = "Alder & Finch Heating · registration 000002";
    document.number = "QKD-000017";
    document.revision = 1;
    document.issued = "25 November 2026";
    document.caution =
        "Work of a competent, registered person. Smell gas? No flames, no switches; close the emergency "
        "control valve; open "
        "windows; go outside and ring 0800 111 999 from there.";
    document.pageWord = "page %1 of %2";
    document.revisionWord = "revision %1";
    document.digestWord = "digest";
    return document;
}

FieldGrid who() {
    return {
        "Who and where",
        3,
        {{"Premises", {"Tŷ Gwŷn, 4 Kiln Row", "Harrowmere QX4 7LD"}, false},
         {"Customer", {"Llŷr ap Tŵm Wiśniewski", "The Tannery, 9 Wharf Street, Harrowmere QX4 1BB"}, false},
         {"Engineer", {"R. Alder · card 0000002", "Alder & Finch Heating"}, false},
         {"Date of the work", {"25 November 2026"}, false},
         {"Customer's reference", {"not given"}, true},
         {"Who was there", {"Mrs Ł. Żółkiewska, tenant"}, false}}};
}

FieldGrid installation() {
    return {"Meter and installation",
            4,
            {{"Gas", {"natural gas"}, false},
             {"Meter", {"U6 diaphragm, serial 00 417 882"}, false},
             {"Work", {"existing"}, false},
             {"Extent", {"the whole installation"}, false},
             {"Appliances", {"connected, all off"}, false},
             {"Gauge", {"no. 2, electronic, 0.01 mbar"}, false},
             {"Calibration due", {"3 December 2026"}, false},
             {"Gauge zeroed", {"yes"}, false}}};
}

/// Figures as the formatter writes them: a no-break space before the unit.
Table withFixedUnits(Table table) {
    const auto fix = [](std::string& text) {
        for (const std::string unit : {"mbar", "mm", "min", "m³", "m"}) {
            const std::string end = " " + unit;
            if (text.size() > end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0) {
                text.replace(text.size() - end.size(), 1, "\u00A0");
                return;
            }
        }
    };
    for (auto& row : table.rows) {
        std::for_each(row.begin(), row.end(), fix);
    }
    std::for_each(table.total.begin(), table.total.end(), fix);
    return table;
}

Table pipes() {
    return withFixedUnits({"Pipework",
                           {{"Section", Align::Left, 2.6},
                            {"Tube", Align::Left, 2.0},
                            {"Length", Align::Right, 1.0},
                            {"Per metre", Align::Right, 1.2},
                            {"Volume", Align::Right, 1.2}},
                           {{"Meter to tee, hall", "Copper 22 mm", "3.2 m", "0.00032 m³", "0.00102 m³"},
                            {"Tee to boiler, kitchen", "Copper 22 mm", "4.1 m", "0.00032 m³", "0.00131 m³"},
                            {"Tee to hob, kitchen", "Copper 15 mm", "2.4 m", "0.00014 m³", "0.00034 m³"},
                            {"Tee to fire, front room", "Copper 15 mm", "5.0 m", "0.00014 m³", "0.00070 m³"}},
                           {"Meter 0.00800 m³ and 10 % for fittings", "", "14.7 m", "", "0.01171 m³"},
                           "Volumes a metre from the trade's published table; the meter's from its badge."});
}

Table readings() {
    return withFixedUnits(
        {"Readings",
         {{"Stage", Align::Left, 2.0},
          {"Start", Align::Right, 1.0},
          {"End", Align::Right, 1.0},
          {"Change", Align::Right, 1.0},
          {"Time", Align::Right, 1.0},
          {"At", Align::Right, 1.2}},
         {{"Let-by", "9.02 mbar", "9.01 mbar", "−0.01 mbar", "1 min", "09:41 to 09:42"},
          {"Settling", "20.52 mbar", "20.50 mbar", "−0.02 mbar", "1 min", "09:44 to 09:45"},
          {"Tightness", "20.50 mbar", "20.46 mbar", "−0.04 mbar", "2 min", "09:45 to 09:47"}},
         {},
         ""});
}

FindingList findings() {
    return {"Findings",
            {{Outcome::Pass,
              "Let-by: pass",
              "0.01 mbar against below 0.2 mbar",
              "No perceptible rise in one minute at 9.02 mbar (band 7 to 10 mbar).",
              {},
              {"IGEM/UP/1B Edition 4 · confirmed by R. Alder, 3 Oct 2026"}},
             {Outcome::Pass,
              "Tightness: pass",
              "0.04 mbar against below 0.2 mbar",
              "The fall is too small for this gauge to be a movement, with the appliances connected.",
              {"As a leak the fall would be worth 0.013 l/h, give or take 0.004 l/h.",
               "Cooling by 0.011 °C would explain it."},
              {"IGEM/UP/1B Edition 4 · confirmed by R. Alder, 3 Oct 2026"}},
             {Outcome::LookAgain,
              "Gauge calibration: look again",
              "8 days left",
              "Calibration runs out on 3 December 2026; it counts today.",
              {},
              {"common practice, no source"}},
             {Outcome::NoVerdict,
              "Volume bands: no verdict",
              "0.01171 m³",
              "The bands of Edition 4 have not been entered; they were not needed for this test.",
              {"Enter them once, in the rule book, from your own copy of the standard."},
              {"rule book · IGEM/UP/1B Edition 4"}}}};
}

Signatures signatures() {
    return {{{"Tested by", "R. Alder", "card 0000002, 25 November 2026"},
             {"Received by", "Mrs Ł. Żółkiewska", "tenant, 25 November 2026"}}};
}

std::string repeated(const std::string& text, int times) {
    std::string all;
    for (int i = 0; i < times; ++i) {
        all += text;
    }
    return all;
}

void add(QStringList& to, const std::string& text) {
    for (const QString& line : QString::fromStdString(text).split(u'\n')) {
        if (!line.trimmed().isEmpty()) {
            to << line.trimmed();
        }
    }
}

void addAll(QStringList& to, const std::vector<std::string>& texts) {
    for (const std::string& text : texts) {
        add(to, text);
    }
}

void addTexts(QStringList& to, const Headline& block) {
    add(to, block.sentence);
    addAll(to, block.details);
}

void addTexts(QStringList& to, const FieldGrid& block) {
    add(to, block.title);
    for (const CaptionedValue& field : block.fields) {
        add(to, field.caption);
        addAll(to, field.lines);
    }
}

void addTexts(QStringList& to, const Table& block) {
    add(to, block.title);
    for (const Column& column : block.columns) {
        add(to, column.title);
    }
    for (const auto& row : block.rows) {
        addAll(to, row);
    }
    addAll(to, block.total);
    add(to, block.note);
}

void addTexts(QStringList& to, const FindingList& block) {
    add(to, block.title);
    for (const FindingLine& finding : block.findings) {
        add(to, finding.title);
        add(to, finding.measured);
        add(to, finding.why);
        addAll(to, finding.notes);
        addAll(to, finding.sources);
    }
}

void addTexts(QStringList& to, const Paragraph& block) {
    add(to, block.title);
    add(to, block.text);
}

void addTexts(QStringList& to, const Statements& block) {
    to << QString::fromStdString(block.title);
    for (const Statement& statement : block.statements) {
        to << QString::fromStdString(statement.caption) << QString::fromStdString(statement.text);
        for (const std::string& detail : statement.details) {
            to << QString::fromStdString(detail);
        }
    }
}

void addTexts(QStringList& to, const Signatures& block) {
    for (const Signature& one : block.signatures) {
        add(to, one.caption);
        add(to, one.name);
        add(to, one.detail);
    }
}

void addTexts(QStringList& to, const Alert& block) {
    add(to, block.word);
    add(to, block.grade);
    addAll(to, block.toTick);
    add(to, block.meaning);
}

// The sender stands in the page's head, not in its body.
void addTexts(QStringList& to, const LetterHead& block) {
    addAll(to, block.recipient);
    add(to, block.date);
    add(to, block.subject);
}

void addTexts(QStringList& to, const WriteIn& block) {
    add(to, block.title);
    for (const WriteField& field : block.fields) {
        add(to, field.caption);
        addAll(to, field.ticks);
    }
}

void addTexts(QStringList& to, const Plots& block) {
    add(to, block.title);
    for (const Plot& plot : block.plots) {
        add(to, plot.title);
        add(to, plot.y.title);
        add(to, plot.x.title);
        const auto addNames = [&](const auto& parts) {
            for (const auto& part : parts) {
                add(to, part.name);
            }
        };
        addNames(plot.series);
        addNames(plot.limits);
        addNames(plot.bands);
        addNames(plot.marks);
    }
    add(to, block.note);
}

void addTexts(QStringList& to, const Pictures& block) {
    add(to, block.title);
    for (const Picture& picture : block.pictures) {
        add(to, picture.of);
        add(to, picture.caption);
    }
}

void addTexts(QStringList& to, const Diagram& block) {
    add(to, block.title);
    add(to, block.start);
    for (const DiagramSection& section : block.sections) {
        add(to, section.above);
        add(to, section.below);
        for (const auto& text : section.end) {
            add(to, text);
        }
    }
    for (const auto& note : block.notes) {
        add(to, note);
    }
}

quantity::Decimal figure(const char* text) {
    return *quantity::Decimal::parse(text);
}

Plot stagePlot() {
    Plot plot;
    plot.title = "Tightness";
    plot.y.title = "pressure, mbar";
    plot.x.ticks = {{figure("0"), "start, 09:46"}, {figure("1"), "end, 09:48"}};
    plot.series = {{"read; the bar is the uncertainty of the change, ±0.02 mbar",
                    PlotShape::Disc,
                    true,
                    true,
                    {{figure("0"), figure("20.70"), {}, "20.70"},
                     {figure("1"), figure("20.66"), figure("0.02"), "20.66"}}}};
    plot.limits = {{figure("20.50"), "No perceptible movement: 0.20 mbar", false},
                   {figure("19.70"), "Drop below which the volume need not be known: 1.00 mbar", true}};
    return plot;
}

Plot roomPlot() {
    Plot plot;
    plot.title = "Carbon monoxide over time";
    plot.y = {"ppm", {}, true};
    plot.x = {"minutes since the first reading", {}, true};
    PlotSeries room{"in the room", PlotShape::Disc, true, true, {}};
    for (const auto& [at, level] : std::vector<std::pair<const char*, const char*>>{
             {"0", "2"}, {"5", "9"}, {"10", ""}, {"15", "31"}, {"20", "36"}, {"30", "34.5"}}) {
        room.points.push_back(
            {figure(at), *level == 0 ? std::nullopt : std::optional(figure(level)), {}, {}});
    }
    plot.series = {{"outdoors", PlotShape::Ring, true, true, {{figure("0"), figure("0"), {}, "0"}}}, room};
    plot.limits = {{figure("10"), "From here the source is looked for: 10 ppm", true}};
    plot.marks = {{figure("12"), "appliance lit"}, {figure("24"), "windows opened"}};
    return plot;
}

Plot tracePlot() {
    Plot plot;
    plot.title = repeated("A trace of many points with a long name ", 3);
    plot.y.title = "ratio CO/CO₂";
    plot.x.title = "seconds";
    PlotSeries trace{"", PlotShape::Disc, true, false, {}};
    for (int i = 0; i < 240; ++i) {
        trace.points.push_back({quantity::Decimal(i, 0), quantity::Decimal(8 + (i * 7) % 13, 4), {}, {}});
    }
    plot.series = {trace};
    plot.bands = {{figure("0.0006"), figure("0.0018"), repeated("what the maker gives ", 6)}};
    return plot;
}

Plot singlePlot() {
    Plot plot;
    plot.title = "One figure";
    plot.y.title = "kW";
    plot.series = {{"", PlotShape::Triangle, true, true, {{figure("3"), figure("-24.10"), {}, "−24.10"}}}};
    return plot;
}

}  // namespace

Document plotDocument() {
    Document document = frame();
    document.blocks = {Headline{Outcome::Pass, "Plots.", {}},
                       Plots{"Readings of the test", {stagePlot(), stagePlot()}, "A note below them."},
                       Plots{"", {roomPlot()}, ""},
                       Plots{"", {singlePlot(), Plot{}}, ""},
                       Plots{"Three and one", {tracePlot(), stagePlot(), roomPlot(), stagePlot()}, ""},
                       signatures()};
    return document;
}

Document usualDocument() {
    Document document = frame();
    document.blocks = {
        Headline{
            Outcome::Pass,
            "Tight: no perceptible movement in two minutes.",
            {"Tested on 25 November 2026 to IGEM/UP/1B Edition 4, appliances connected. Purged and relit."}},
        who(),
        installation(),
        pipes(),
        readings(),
        findings(),
        FieldGrid{"Purge and restore",
                  4,
                  {{"Purged through", {"boiler burner"}, false},
                   {"Volume passed", {"0.020 m³"}, false},
                   {"Test point proved", {"with fluid, wiped"}, false},
                   {"Standing pressure", {"not taken"}, true}}},
        Statements{
            "Boiler, kitchen",
            {{"Safety defects", "none found", std::nullopt, {}},
             {"Safe to use", "no, declared not safe", Outcome::Fail, {"by R. Alder, from what was seen"}}}},
        Paragraph{"Remarks", "The cupboard door sticks; the valve handle is reached from the left.", false},
        signatures()};
    return document;
}

Document shortDocument() {
    Document document = frame();
    FindingList two = findings();
    two.findings.resize(2);
    document.blocks = {Headline{Outcome::Fail, "Not tight: the gauge fell 1.40 mbar in two minutes.", {}},
                       who(), two, signatures()};
    return document;
}

Document longestDocument() {
    Document document = frame();
    const std::string word = repeated("Donaudampfschifffahrts", 12);
    const std::string sentence =
        "The longest remark that anybody would type goes on and on, over lines and over pages. ";
    document.title = "Gas tightness, strength and purge record of an installation with a rather long name";
    document.subtitle =
        "IGEM/UP/1B Edition 4, with the amendments that the firm has entered from its own copy of the "
        "standard";
    document.firm = repeated("Alder & Finch & Sons & Daughters ", 4) + "Heating · registration 000002";
    document.supersedes = "replaces QKD-000016 revision 1: " + sentence;
    document.banner = "Demonstration: not a real record";
    document.revision = 12;
    Table long_ = pipes();
    long_.rows.clear();
    for (int i = 1; i <= 70; ++i) {
        long_.rows.push_back({"Section " + std::to_string(i) + (i % 9 == 0 ? " " + sentence : ""),
                              "Copper 22 mm", "3.2 m", "0.00032 m³",
                              i % 11 == 0 ? "0.00102 m³ (typed)" : "0.00102 m³"});
    }
    long_.rows.push_back({word, word, word, "0.00032 m³", "0.00102 m³"});
    FindingList all = findings();
    all.findings[0].why = repeated(sentence, 9);
    all.findings[1].measured = repeated("0.04 mbar against below 0.2 mbar; ", 6);
    all.findings[2].title = "Gauge calibration: " + word;
    all.findings[3].notes = {repeated(sentence, 80)};
    FieldGrid grid = who();
    grid.fields[0].lines = {word, repeated(sentence, 3)};
    grid.fields[3].caption = repeated("A caption that is longer than its column ", 2);
    document.blocks = {Headline{Outcome::NoVerdict, repeated(sentence, 3), {repeated(sentence, 2), word}},
                       grid,
                       installation(),
                       long_,
                       readings(),
                       all,
                       Paragraph{"Remarks", repeated(sentence, 120) + "\n\n" + word + "\n" + sentence, false},
                       Paragraph{"", repeated(sentence, 5), true},
                       Statements{repeated("A title that runs on ", 12),
                                  {{repeated("A caption of several lines ", 4),
                                    repeated(sentence, 70),
                                    Outcome::Fail,
                                    {repeated(sentence, 40), word}},
                                   {word, word, std::nullopt, {}}}},
                       Signatures{{{"Tested by", word, sentence},
                                   {"Received by", "Mrs Ł. Żółkiewska", "tenant"},
                                   {"Witnessed by", "O. Finch", "apprentice"},
                                   {"Also there", "nobody", ""}}}};
    return document;
}

std::string sampleDigest() {
    return "7f3a91c204be55d0a1e6c3380f9b2d47e8107c65b3f2a94d0c5e71b86a29f413";
}

namespace {

QStringList unparted(const Document& document) {
    QStringList texts;
    for (const Block& block : document.blocks) {
        std::visit([&texts](const auto& one) { addTexts(texts, one); }, block);
    }
    return texts;
}

}  // namespace

QStringList textsOf(const Document& document) {
    QStringList texts;
    for (const QString& text : unparted(document)) {
        texts += text.split(QLatin1Char(record::kBeside));
    }
    return texts;
}

std::vector<std::pair<QString, QString>> pairsOf(const Document& document) {
    std::vector<std::pair<QString, QString>> pairs;
    for (const QString& text : unparted(document)) {
        const QStringList both = text.split(QLatin1Char(record::kBeside));
        if (both.size() == 2) {
            pairs.emplace_back(both[0], both[1]);
        }
    }
    return pairs;
}

}  // namespace hearth::testing
