// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/civil_date.h"
#include "core/pipework/tube.h"
#include "core/pipework/volume.h"
#include "core/quantity/typed.h"
#include "core/record/kind.h"
#include "core/register/doings.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rule_book.h"

#include <QString>
#include <QStringList>

#include <memory>
#include <string>
#include <string_view>
#include <vector>

class QTranslator;

/// Sentences for findings, errors and items, in a language that the caller names (a record's, not the
/// window's).
namespace hearth::ui::words {

class Words {
  public:
    /// "en", "cy", "pl"; "en_XA" is the pseudo-locale of the tests and the gallery. An unknown language
    /// speaks English, and so does one that another stands beside ("en+cy"). What has no translation is
    /// English.
    explicit Words(const QString& language = QStringLiteral("en"));
    /// A language that stands beside English: numbers are written as there, so that a value stands once.
    [[nodiscard]] static Words beside(const QString& language);
    Words(Words&&) noexcept;
    Words& operator=(Words&&) noexcept;
    ~Words();
    Words(const Words&) = delete;
    Words& operator=(const Words&) = delete;
    [[nodiscard]] QString language() const;

    [[nodiscard]] QString outcome(rulebook::Outcome outcome) const;        // "pass"
    [[nodiscard]] QString findingTitle(rulebook::FindingKind kind) const;  // "Let-by"
    [[nodiscard]] QString sentence(const rulebook::Sentence& sentence) const;
    [[nodiscard]] QString error(const Error& error) const;
    [[nodiscard]] QString item(reg::Item item) const;      // label
    [[nodiscard]] QString itemHelp(reg::Item item) const;  // one line; may be empty
    [[nodiscard]] QString choice(reg::Item item, const std::string& code) const;
    [[nodiscard]] QString figure(const quantity::Figure& figure) const;
    [[nodiscard]] QString unit(quantity::UnitCode unit) const;
    [[nodiscard]] QString date(calendar::Date date) const;       // 25 November 2026
    [[nodiscard]] QString shortDate(calendar::Date date) const;  // 25 Nov 2026
    [[nodiscard]] QString gas(rulebook::Gas gas) const;
    [[nodiscard]] QString edition(rulebook::Edition edition) const;  // "IGEM/UP/1B Edition 4"
    [[nodiscard]] QString provenance(rulebook::Provenance provenance) const;
    [[nodiscard]] QString provenanceMeaning(rulebook::Provenance provenance) const;
    [[nodiscard]] QString rule(rulebook::Rule rule) const;
    [[nodiscard]] QString ruleValue(const rulebook::Entry& entry) const;  // "20 to 21 mbar", "not entered"
    [[nodiscard]] QString source(const rulebook::Entry& entry) const;     // one line
    /// "0.04 mbar (limit: below 0.2 mbar)"; empty when the finding measures nothing.
    [[nodiscard]] QString measuredAgainst(const rulebook::Finding& finding) const;
    /// Why the rule book can't take a value ("the least is greater than the most"), by the code that
    /// RuleBook::lay gives.
    [[nodiscard]] QString valueFault(std::string_view code) const;
    /// "Band 2: volumes must rise from band to band".
    [[nodiscard]] QString bandDoubt(const rulebook::BandDoubt& doubt) const;
    [[nodiscard]] QString comparison(rulebook::Comparison comparison) const;  // "at most"
    [[nodiscard]] QString volumeBasis(pipework::VolumeBasis basis) const;
    [[nodiscard]] QString role(reg::RoleKind role) const;
    [[nodiscard]] QString country(reg::Country country) const;
    [[nodiscard]] QString partyKind(reg::PartyKind kind) const;
    [[nodiscard]] QString instrumentKind(reg::InstrumentKind kind) const;
    [[nodiscard]] QString tube(const pipework::Tube& tube) const;  // "Copper 15 mm"
    [[nodiscard]] QString tubeFamily(pipework::TubeFamily family) const;
    [[nodiscard]] QString meter(const pipework::Meter& meter) const;
    [[nodiscard]] QString recordKind(record::RecordKind kind) const;
    [[nodiscard]] QString field(record::Field field) const;
    [[nodiscard]] QString missing(const record::Missing& missing) const;   // "Tightness, end: not entered"
    [[nodiscard]] QString wantedBy(const record::Missing& missing) const;  // "wanted by: common practice"

    /// The numbers to ring, as a part of a sentence: "0800 111 999 (gas emergency service)".
    [[nodiscard]] QString whomToRing(rulebook::Gas gas, reg::Country country,
                                     const std::vector<reg::EmergencyContact>& contacts) const;
    /// What to do first, one step a line; by event and gas, with the numbers to ring (see
    /// reg::linesToRing()). `contacts`: the firm's own.
    enum class Emergency { SmellOrEscape, FailedTest, CarbonMonoxide };
    [[nodiscard]] QString emergencyTitle(Emergency emergency) const;
    [[nodiscard]] QStringList emergencySteps(Emergency emergency, rulebook::Gas gas, reg::Country country,
                                             const std::vector<reg::EmergencyContact>& contacts) const;
    /// The one-line caution of records, About and first start.
    [[nodiscard]] QString caution(rulebook::Gas gas, reg::Country country,
                                  const std::vector<reg::EmergencyContact>& contacts) const;

    /// An English text of this folder (marked with QT_TRANSLATE_NOOP("Words", …)) in this language, with %1,
    /// %2 … replaced by the arguments in one pass, so that an argument may hold a percent sign.
    [[nodiscard]] QString say(const char* source, const QStringList& arguments = {}) const;
    /// The same for a text that counts something: %n and the form of the number ("1 day", "8 days").
    [[nodiscard]] QString sayCount(const char* source, int count, const QStringList& arguments = {}) const;

    /// How this language writes numbers: "0.04", "0,04".
    [[nodiscard]] quantity::DecimalMark decimalMark() const { return m_mark; }

  private:
    [[nodiscard]] QString translated(const char* source, int count) const;

    QString m_language;
    quantity::DecimalMark m_mark = quantity::DecimalMark::Point;
    std::unique_ptr<QTranslator> m_translator;
    std::unique_ptr<QTranslator> m_english;  // for what the language's own lacks
};

[[nodiscard]] inline QString qstring(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

}  // namespace hearth::ui::words
