// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include "app/command_table.h"
#include "app/console.h"

#include <QCoreApplication>

#include <utility>
#include <vector>

namespace hearth::app {
namespace {

using Faulty = tl::unexpected<UsageProblem>;

/// Reads the words one after the other; what is said of each is put into `line`.
class Reader {
  public:
    explicit Reader(const QStringList& arguments) : m_arguments(arguments) {}

    tl::expected<CommandLine, UsageProblem> read() {
        for (m_at = 0; m_at < m_arguments.size(); ++m_at) {
            const QString& argument = m_arguments.at(m_at);
            if (!m_onlyWords && argument == QLatin1String("--")) {
                m_onlyWords = true;
                continue;
            }
            const bool isOption =
                !m_onlyWords && argument.startsWith(QLatin1Char('-')) && argument.size() > 1;
            if (auto taken = isOption ? takeOption(argument) : takeWord(argument); !taken) {
                return Faulty(taken.error());
            }
        }
        return checked();
    }

  private:
    using Taken = tl::expected<void, UsageProblem>;

    [[nodiscard]] Faulty faulty(UsageFault fault, const QString& word) const {
        return Faulty(UsageProblem{fault, word, m_line.verb});
    }

    Taken takeWord(const QString& word) {
        if (m_verbSaid) {
            m_line.words.append(word);
            return {};
        }
        const Command* command = commandOf(word);
        if (command == nullptr) {
            return faulty(UsageFault::WordUnknown, word);
        }
        m_verbSaid = true;
        m_line.verb = command->verb;
        return {};
    }

    Taken takeOption(const QString& argument) {
        if (argument == QLatin1String("-h")) {
            return takeNamed(QStringLiteral("help"), {});
        }
        if (argument == QLatin1String("--version") || argument == QLatin1String("-V")) {
            m_line.verb = Verb::Version;
            m_verbSaid = true;
            return {};
        }
        if (!argument.startsWith(QLatin1String("--"))) {
            return faulty(UsageFault::OptionUnknown, argument);
        }
        const auto equals = argument.indexOf(QLatin1Char('='));
        const QString name = argument.mid(2, equals < 0 ? -1 : equals - 2);
        return takeNamed(name, equals < 0 ? std::nullopt : std::optional<QString>(argument.mid(equals + 1)));
    }

    Taken takeNamed(const QString& name, std::optional<QString> value) {
        const Option* option = optionOf(name);
        const QString shown = QStringLiteral("--") + name;
        if (option == nullptr) {
            return faulty(UsageFault::OptionUnknown, shown);
        }
        if (option->value.isEmpty() == value.has_value()) {
            if (value || m_at + 1 >= m_arguments.size()) {
                return faulty(value ? UsageFault::ValueWrong : UsageFault::ValueMissing, shown);
            }
            value = m_arguments.at(++m_at);
        }
        m_said.push_back(option);
        m_helpAsked = m_helpAsked || name == QLatin1String("help");
        if (!option->keep(m_line, value.value_or(QString()))) {
            return faulty(UsageFault::ValueWrong, shown);
        }
        return {};
    }

    tl::expected<CommandLine, UsageProblem> checked() {
        if (m_helpAsked && m_line.verb != Verb::Help) {
            m_line.words = m_verbSaid ? QStringList{infoOf(m_line.verb).word} : QStringList{};
            m_line.verb = Verb::Help;
        }
        const Command& command = infoOf(m_line.verb);
        if (m_line.verb == Verb::Help && !m_line.words.isEmpty() &&
            commandOf(m_line.words.first()) == nullptr) {
            return faulty(UsageFault::WordUnknown, m_line.words.first());
        }
        if (m_helpAsked) {
            return m_line;
        }
        for (const Option* option : m_said) {
            if (!isKnownTo(command, *option)) {
                return faulty(UsageFault::OptionNotHere, QStringLiteral("--") + option->name);
            }
        }
        if (m_line.words.size() < command.least) {
            return faulty(UsageFault::WordsMissing,
                          QString(command.operands).section(QLatin1Char(' '), 0, 0));
        }
        if (m_line.words.size() > command.most) {
            return faulty(UsageFault::WordsTooMany, m_line.words.at(command.most));
        }
        return checkedTogether();
    }

    /// What only makes sense with something else.
    tl::expected<CommandLine, UsageProblem> checkedTogether() {
        if (m_line.store && m_line.demonstration) {
            return faulty(UsageFault::OptionNotHere, QStringLiteral("--demonstration"));
        }
        if (m_line.revises.has_value() != m_line.reason.has_value()) {
            return faulty(UsageFault::WordsMissing, m_line.reason ? QStringLiteral("--revises NUMBER")
                                                                  : QStringLiteral("--reason TEXT"));
        }
        if ((m_line.verb == Verb::Pdf || m_line.verb == Verb::MakeFrom) && !m_line.to) {
            return faulty(UsageFault::WordsMissing, QStringLiteral("--to FILE"));
        }
        if ((m_line.verb == Verb::NewKey || m_line.verb == Verb::Sign) && !m_line.passphrase) {
            return faulty(UsageFault::WordsMissing, QStringLiteral("--passphrase FILE"));
        }
        const bool wantsOneOfTwo = m_line.verb == Verb::Collect || m_line.verb == Verb::Calendar;
        if (wantsOneOfTwo && m_line.to.has_value() == m_line.into.has_value()) {
            return m_line.to ? faulty(UsageFault::OptionNotHere, QStringLiteral("--into"))
                             : faulty(UsageFault::WordsMissing, QStringLiteral("--to FILE"));
        }
        if ((m_line.verb == Verb::Demonstration || m_line.verb == Verb::Blank) && !m_line.into) {
            return faulty(UsageFault::WordsMissing, QStringLiteral("--into FOLDER"));
        }
        return m_line;
    }

    const QStringList& m_arguments;
    CommandLine m_line;
    std::vector<const Option*> m_said;
    qsizetype m_at = 0;
    bool m_verbSaid = false;
    bool m_helpAsked = false;
    bool m_onlyWords = false;
};

QString usageLine(const Command& command) {
    QString line = QStringLiteral("hearthledger");
    if (!command.word.isEmpty()) {
        line += QLatin1Char(' ') + command.word;
    }
    if (!command.operands.isEmpty()) {
        line += QLatin1Char(' ') + command.operands;
    }
    for (const auto& name : command.knows) {
        const QString option = QStringLiteral("--") + name;
        if (QString(command.operands).contains(option)) {
            continue;  // it has to be there, and stands among the operands
        }
        const QLatin1String value = optionOf(name)->value;
        line += QStringLiteral(" [") + option + (value.isEmpty() ? QString() : QLatin1Char(' ') + value) +
                QLatin1Char(']');
    }
    return line;
}

QString optionHelp(const Option& option) {
    const QString name = QStringLiteral("--") + option.name +
                         (option.value.isEmpty() ? QString() : QLatin1Char(' ') + option.value);
    return QStringLiteral("  %1 %2\n").arg(name, -18).arg(tr(option.what));
}

QString helpOf(const Command& command) {
    QString text = usageLine(command) + QLatin1Char('\n') + QStringLiteral("  ") + tr(command.what) +
                   QStringLiteral("\n");
    if (command.verb == Verb::Judge || command.verb == Verb::Issue) {
        text += QStringLiteral("  ") +
                tr("VISIT is what \"visits\" shows at the left, or words that only one visit has.") +
                QLatin1Char('\n');
    }
    if (!command.knows.empty()) {
        text += QLatin1Char('\n');
    }
    for (const auto& option : options()) {
        if (isKnownTo(command, option)) {
            text += optionHelp(option);
        }
    }
    return text;
}

}  // namespace

tl::expected<CommandLine, UsageProblem> parseCommandLine(const QStringList& arguments) {
    return Reader(arguments).read();
}

QString usageText(const UsageProblem& problem) {
    QString sentence;
    switch (problem.fault) {
        case UsageFault::WordUnknown:
            sentence = tr("There is no command \"%1\".");
            break;
        case UsageFault::OptionUnknown:
            sentence = tr("There is no option %1.");
            break;
        case UsageFault::OptionNotHere:
            sentence = tr("The option %1 has no meaning here.");
            break;
        case UsageFault::ValueMissing:
            sentence = tr("The option %1 needs a value after it.");
            break;
        case UsageFault::ValueWrong:
            sentence = tr("The option %1 does not take that value.");
            break;
        case UsageFault::WordsMissing:
            sentence = tr("Something is missing: %1.");
            break;
        case UsageFault::WordsTooMany:
            sentence = tr("There is one word too many: \"%1\".");
            break;
    }
    return sentence.arg(problem.word) + QLatin1Char('\n') +
           tr("Usage: %1").arg(usageLine(infoOf(problem.verb))) + QLatin1Char('\n') +
           tr("All commands: hearthledger --help") + QLatin1Char('\n');
}

QString helpText(const QString& verb) {
    if (const Command* command = commandOf(verb)) {
        return helpOf(*command);
    }
    QString text =
        tr("Hearthledger: readings of a gas tightness test become a judged, printed, kept record.") +
        QStringLiteral("\n\n");
    for (const auto& command : commands()) {
        text += QStringLiteral("  hearthledger %1 %2\n")
                    .arg(QString(command.word + QLatin1Char(' ') + command.operands).trimmed(), -29)
                    .arg(tr(command.what));
    }
    text +=
        QLatin1Char('\n') + tr("Options (\"help COMMAND\" says which a command knows):") + QLatin1Char('\n');
    for (const auto& option : options()) {
        text += optionHelp(option);
    }
    text += QLatin1Char('\n') +
            tr("Ends with 0: done, and for judge a pass; 1: the answer is no (not a pass, a record that may "
               "not be\n"
               "issued, nothing of that name); 2: not understood; 3: a store or file could not be used; and "
               "for\n"
               "verify 1: not ours, 4: superseded, 5: void, 6: changed.") +
            QStringLiteral("\n\n") +
            tr("It supports a competent, registered person and replaces neither training nor the standard "
               "nor the\n"
               "maker's instructions.") +
            QLatin1Char('\n');
    return text;
}

}  // namespace hearth::app
