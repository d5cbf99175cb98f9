// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/blank_words.h"

#include "core/register/appliance_kinds.h"
#include "ui/words/document_parts.h"
#include "ui/words/kept_words.h"
#include "ui/words/usual_unit.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace hearth::ui::words {

namespace {

using record::Field;
using record::RecordKind;
using record::Requirement;
using record::WriteField;
using record::WriteIn;
using reg::Item;
using reg::SubjectKind;

constexpr int kRemarkLines = 3;
constexpr int kLongLines = 2;
constexpr int kReadingRows = 8;
constexpr int kPipeRows = 5;

/// Printed by the firm, or written where somebody signs, or a table of its own.
bool hasOwnPlace(const Requirement& wanted) {
    constexpr std::array kFields{Field::FirmName,     Field::FirmAddress,      Field::FirmRegistration,
                                 Field::PipeOrder,    Field::ApplianceChecked, Field::RoomNamed,
                                 Field::EngineerName, Field::EngineerCard};
    constexpr std::array kItems{Item::VisitRemarks,     Item::SignedByEngineer,  Item::ReceivedBy,
                                Item::SituationReceipt, Item::SituationCopyLeft, Item::SituationReceivedBy,
                                Item::RoomCoPlace,      Item::RoomCoAt,          Item::RoomCo};
    return wanted.field ? wanted.field == Field::PipeOrVolume ||
                              std::find(kFields.begin(), kFields.end(), *wanted.field) != kFields.end()
                        : std::find(kItems.begin(), kItems.end(), *wanted.item) != kItems.end();
}

SubjectKind subjectOf(const Requirement& wanted) {
    if (wanted.item) {
        return reg::infoOf(*wanted.item).subject;
    }
    switch (*wanted.field) {
        case Field::InstrumentSerial:
        case Field::InstrumentCalibration:
            return SubjectKind::Test;
        case Field::InstallationGas:
        case Field::InstallationMeter:
            return SubjectKind::Installation;
        case Field::ApplianceKind:
        case Field::ApplianceMake:
        case Field::ApplianceModel:
        case Field::ApplianceSerial:
        case Field::AppliancePlace:
        case Field::ApplianceFlue:
            return SubjectKind::Appliance;
        case Field::SituationDanger:
        case Field::SituationWhat:
        case Field::SituationWhere:
            return SubjectKind::Situation;
        default:
            return SubjectKind::Visit;
    }
}

/// " (mbar)"; nothing for what has no unit.
std::string unitAfter(const DocumentPage& page, Item item) {
    const bool has = !quantity::unitsOf(reg::infoOf(item).units).empty();
    const QString unit = has ? page.words().unit(usualUnit(item)) : QString();
    return unit.isEmpty() ? std::string() : " (" + utf8(unit) + ")";
}

WriteField itemPlace(const DocumentPage& page, Item item) {
    const auto& info = reg::infoOf(item);
    WriteField place;
    // Strength and tightness have no titles of their own here, which the short captions stand under.
    place.caption = utf8(info.subject == SubjectKind::Installation ? page.words().item(item)
                                                                   : recordCaption(page.words(), item));
    switch (info.kind) {
        case reg::ItemKind::Choice:
        case reg::ItemKind::YesNo:
            for (const auto& one : info.choices) {
                place.ticks.push_back(utf8(page.words().choice(item, std::string(one.code))));
            }
            place.lines = 0;
            break;
        case reg::ItemKind::LongText:
            place.lines = item == Item::SituationRefusalWords ? 1 : kLongLines;
            break;
        case reg::ItemKind::Number:
            place.caption += unitAfter(page, item);
            break;
        default:
            break;
    }
    return place;
}

WriteField fieldPlace(const DocumentPage& page, Field field) {
    WriteField place;
    place.caption = utf8(page.words().field(field));
    place.wide = field == Field::PremisesAddress;
    if (field == Field::SituationDanger) {
        for (const auto grade : {reg::Danger::ImmediatelyDangerous, reg::Danger::AtRisk}) {
            place.ticks.push_back(utf8(danger(page.words(), grade)));
        }
        place.lines = 0;
    } else if (field == Field::ApplianceFlue) {
        for (const auto flue :
             {reg::FlueType::RoomSealed, reg::FlueType::OpenFlued, reg::FlueType::Flueless}) {
            place.ticks.push_back(
                utf8(page.words().choice(Item::ApplianceFlue, std::string(reg::codeOf(flue)))));
        }
        place.lines = 0;
    } else if (field == Field::SituationWhat || field == Field::LandlordAddress) {
        place.lines = kLongLines;
    }
    return place;
}

const char* sectionTitle(SubjectKind kind) {
    switch (kind) {
        case SubjectKind::Installation:
            return QT_TRANSLATE_NOOP("Words", "Installation");
        case SubjectKind::Test:
            return QT_TRANSLATE_NOOP("Words", "Test");
        case SubjectKind::Appliance:
            return QT_TRANSLATE_NOOP("Words", "Appliance");
        case SubjectKind::Room:
            return QT_TRANSLATE_NOOP("Words", "Room");
        case SubjectKind::Situation:
            return QT_TRANSLATE_NOOP("Words", "Unsafe situation");
        case SubjectKind::Visit:
            break;
    }
    return QT_TRANSLATE_NOOP("Words", "The visit");
}

record::Table rowsToWrite(const DocumentPage& page, const char* title, std::vector<const char*> columns,
                          int rows) {
    record::Table table;
    table.title = page.text(title);
    for (const char* column : columns) {
        table.columns.push_back({page.text(column), record::Align::Left, 1.0});
    }
    table.toWrite = rows;
    return table;
}

/// Readings and pipes are written one below the other.
void addTableFor(const DocumentPage& page, const Requirement& wanted, Blocks& blocks) {
    if (wanted.item == Item::RoomCo) {
        blocks.emplace_back(
            rowsToWrite(page, QT_TRANSLATE_NOOP("Words", "Carbon monoxide in the air"),
                        {QT_TRANSLATE_NOOP("Words", "Place"), QT_TRANSLATE_NOOP("Words", "After (min)"),
                         QT_TRANSLATE_NOOP("Words", "CO (ppm)")},
                        kReadingRows));
    } else if (wanted.field == Field::PipeOrVolume) {
        blocks.emplace_back(
            rowsToWrite(page, QT_TRANSLATE_NOOP("Words", "Pipework"),
                        {QT_TRANSLATE_NOOP("Words", "From"), QT_TRANSLATE_NOOP("Words", "Leads to"),
                         QT_TRANSLATE_NOOP("Words", "Tube"), QT_TRANSLATE_NOOP("Words", "Length (m)")},
                        kPipeRows));
    }
}

/// What a subject is asked for, in a row of blocks.
struct SubjectPart {
    SubjectKind subject = SubjectKind::Visit;
    Blocks blocks;
};

/// A visit may have several of some, each to be written down for itself.
int timesOf(const BlankInput& input, SubjectKind kind) {
    constexpr int kUsual = 2;
    if (kind == SubjectKind::Situation) {
        // Elsewhere than on its notice one is rare enough.
        return input.kind == RecordKind::WarningNotice ? input.subjects.value_or(1) : 1;
    }
    const bool comesInSeveral = kind == SubjectKind::Appliance || kind == SubjectKind::Room;
    return comesInSeveral ? input.subjects.value_or(kUsual) : 1;
}

/// "Appliance 1 of 2": the title wherever the part names its subject.
void numberPart(const DocumentPage& page, SubjectPart& part, int which, int of) {
    const std::string title = page.text(sectionTitle(part.subject));
    for (auto& block : part.blocks) {
        if (auto* section = std::get_if<WriteIn>(&block); section != nullptr && section->title == title) {
            section->title = page.text(QT_TRANSLATE_NOOP("Words", "%1 %2 of %3"),
                                       {qstring(title), QString::number(which), QString::number(of)});
        }
    }
}

void addRepeated(const DocumentPage& page, const BlankInput& input, const std::vector<SubjectPart>& parts,
                 Blocks& blocks) {
    for (const auto& part : parts) {
        const int times = timesOf(input, part.subject);
        for (int which = 1; which <= times; ++which) {
            SubjectPart one = part;
            if (times > 1) {
                numberPart(page, one, which, times);
            }
            std::move(one.blocks.begin(), one.blocks.end(), std::back_inserter(blocks));
        }
    }
}

/// Everything that the kind asks for, subject by subject as it asks.
std::vector<SubjectPart> placesFor(const DocumentPage& page) {
    const bool notice = page.input().kind == RecordKind::WarningNotice;
    WriteIn section;
    section.title = page.text(QT_TRANSLATE_NOOP("Words", "Who and where"));
    bool people = true;
    auto subject = SubjectKind::Visit;
    std::vector<SubjectPart> parts(1);
    const auto close = [&] {
        if (!section.fields.empty()) {
            parts.back().blocks.emplace_back(std::move(section));
        }
        section = {};
    };
    for (const auto& wanted : record::requirementsOf(page.input().kind)) {
        if (hasOwnPlace(wanted)) {
            const bool table = wanted.item == Item::RoomCo || wanted.field == Field::PipeOrVolume;
            if (table) {
                close();
                addTableFor(page, wanted, parts.back().blocks);
                section.title = page.text(sectionTitle(subject));
            }
            continue;
        }
        // In the frame at the head, and where it is signed.
        if (notice && (wanted.field == Field::SituationDanger || wanted.field == Field::VisitDate)) {
            continue;
        }
        const auto of = subjectOf(wanted);
        const bool begins = of != subject || (people && wanted.item);
        if (begins) {
            close();
            section.title = page.text(sectionTitle(of));
            subject = of;
            people = false;
            parts.push_back({of, {}});
        }
        section.fields.push_back(wanted.item ? itemPlace(page, *wanted.item)
                                             : fieldPlace(page, *wanted.field));
    }
    close();
    return parts;
}

/// What only some kinds are asked for, once each: whoever finds one writes down which it is.
std::vector<SubjectPart> placesOfSomeKinds(const DocumentPage& page) {
    struct Kinds {
        std::vector<std::string_view> kinds;
        bool capped = false;
    };
    namespace choice = reg::choice;
    const std::array<Kinds, 4> all{{{{choice::kLeisureVehicle, choice::kBoat}},
                                    {{choice::kCatering}},
                                    {{choice::kUnventedCylinder}},
                                    {{std::string_view()}, true}}};
    std::vector<SubjectPart> parts;
    for (const Kinds& one : all) {
        WriteIn section;
        section.title = page.text(titleOfKind(one.kinds.front(), one.capped));
        for (const auto& wanted : record::requirementsOfSomeKinds(page.input().kind)) {
            const bool isMeant = reg::isOfSomeKinds(*wanted.item) &&
                                 std::any_of(one.kinds.begin(), one.kinds.end(), [&](std::string_view kind) {
                                     return reg::canBeAsked(*wanted.item, kind, one.capped);
                                 });
            if (isMeant) {
                section.fields.push_back(itemPlace(page, *wanted.item));
            }
        }
        if (!section.fields.empty()) {
            section.fields.insert(section.fields.begin(), {fieldPlace(page, Field::ApplianceKind),
                                                           fieldPlace(page, Field::AppliancePlace)});
            parts.push_back({SubjectKind::Visit, {}});
            parts.back().blocks.emplace_back(std::move(section));
        }
    }
    return parts;
}

/// Behind the appliances.
std::vector<SubjectPart> withSomeKinds(const DocumentPage& page, std::vector<SubjectPart> parts) {
    const auto last = std::find_if(parts.rbegin(), parts.rend(), [](const SubjectPart& part) {
        return part.subject == SubjectKind::Appliance;
    });
    auto more = placesOfSomeKinds(page);
    parts.insert(last == parts.rend() ? parts.end() : last.base(), std::make_move_iterator(more.begin()),
                 std::make_move_iterator(more.end()));
    return parts;
}

void addOutcome(const DocumentPage& page, Blocks& blocks) {
    using rulebook::Outcome;
    if (page.input().kind == RecordKind::WarningNotice) {
        record::Alert alert;
        alert.word = dangerWord(page);
        for (const auto grade : {reg::Danger::ImmediatelyDangerous, reg::Danger::AtRisk}) {
            alert.toTick.push_back(utf8(danger(page.words(), grade)));
        }
        blocks.emplace_back(std::move(alert));
        blocks.emplace_back(whatNotToDo(page));
        return;
    }
    if (page.input().kind == RecordKind::ReportableEntry || page.input().kind == RecordKind::BuildingNotice) {
        return;
    }
    WriteIn outcome;
    WriteField place{page.text(QT_TRANSLATE_NOOP("Words", "Outcome as the engineer sees it")), {}, 0};
    for (const auto one : {Outcome::Pass, Outcome::Fail, Outcome::LookAgain, Outcome::NoVerdict}) {
        place.ticks.push_back(utf8(page.words().outcome(one)));
    }
    outcome.fields.push_back(std::move(place));
    blocks.emplace_back(std::move(outcome));
}

record::Signatures placesToSign(const DocumentPage& page) {
    const std::string card = page.text(QT_TRANSLATE_NOOP("Words", "Name, card number and date"));
    const std::string name = page.text(QT_TRANSLATE_NOOP("Words", "Name and date"));
    const bool notice = page.input().kind == RecordKind::WarningNotice;
    return {{{page.text(QT_TRANSLATE_NOOP("Words", "Signed by the engineer")), {}, card},
             {notice ? page.text(QT_TRANSLATE_NOOP("Words", "Received and understood by, or copy left at"))
                     : page.text(QT_TRANSLATE_NOOP("Words", "Received by (not required)")),
              {},
              name}}};
}

}  // namespace

std::vector<RecordKind> blankKinds() {
    std::vector<RecordKind> kinds;
    const auto all = record::allKinds();
    std::copy_if(all.begin(), all.end(), std::back_inserter(kinds), [](RecordKind kind) {
        return !record::isLetter(kind) && kind != RecordKind::CalibrationLog;
    });
    return kinds;
}

record::Document blankFor(const BlankInput& input, const Words& words) {
    reg::VisitFile nothing;
    nothing.firm = input.firm;
    nothing.premises.country = input.firm.country;
    const std::vector<judging::Judged> noFindings;
    const pipework::VolumeReport noVolume{};
    const DocumentInput documentInput{input.kind, nothing, noFindings, noVolume, {}, input.logo};
    const DocumentPage page(documentInput, words);
    record::Document document;
    setFrame(page, document);
    document.number = input.number;
    document.subtitle = page.text(
        QT_TRANSLATE_NOOP("Words",
                          "Blank, to be filled in by pen. Typed in later, the record gets a number of "
                          "its own; this blank’s number is its reference."));
    document.issued.clear();
    document.revisionWord.clear();
    addOutcome(page, document.blocks);
    const auto before = static_cast<std::ptrdiff_t>(document.blocks.size());
    addRepeated(page, input, withSomeKinds(page, placesFor(page)), document.blocks);
    if (input.kind == RecordKind::WarningNotice) {
        // What is wrong comes before who and where, as on the notice itself.
        std::rotate(document.blocks.begin() + before, document.blocks.begin() + before + 1,
                    document.blocks.end());
    }
    const auto wanted = record::requirementsOf(input.kind);
    if (std::any_of(wanted.begin(), wanted.end(),
                    [](const Requirement& one) { return one.item == Item::VisitRemarks; })) {
        document.blocks.emplace_back(
            WriteIn{{}, {{page.text(QT_TRANSLATE_NOOP("Words", "Remarks")), {}, kRemarkLines}}});
    }
    document.blocks.emplace_back(placesToSign(page));
    return document;
}

}  // namespace hearth::ui::words
