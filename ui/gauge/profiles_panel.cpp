// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/profiles_panel.h"

#include "ui/gauge/ask_line.h"
#include "ui/gauge/gauge_words.h"
#include "ui/input/editor.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"

#include <QVBoxLayout>

#include <algorithm>
#include <optional>

namespace hearth::ui::gauge {

namespace {

constexpr int kMostPort = 65535;
constexpr int kMostSpeed = 4'000'000;

QString profileText(const std::string& text) {
    return QString::fromStdString(text);
}

std::vector<input::ChoiceItem> unitChoices(const std::vector<quantity::UnitCode>& units) {
    std::vector<input::ChoiceItem> choices;
    for (const auto unit : units) {
        const std::string name(quantity::unitText(unit));
        choices.push_back({profileText(name), profileText(name)});
    }
    return choices;
}

std::optional<quantity::UnitCode> unitNamed(const QString& name,
                                            const std::vector<quantity::UnitCode>& units) {
    for (const auto unit : units) {
        if (profileText(std::string(quantity::unitText(unit))) == name) {
            return unit;
        }
    }
    return std::nullopt;
}

}  // namespace

ProfilesPanel::ProfilesPanel(std::vector<GaugeProfile> profiles, quantity::UnitFamily reads,
                             const Clock& clock, const words::Words& words, QWidget* parent)
    : QWidget(parent), m_profiles(std::move(profiles)), m_reads(reads), m_clock(clock), m_words(words) {
    setObjectName(readsAir() ? QStringLiteral("airProfilesPanel") : QStringLiteral("profilesPanel"));
    const QString title = readsAir() ? tr("Instruments for carbon monoxide that send their readings")
                                     : tr("Gauges that send their readings");
    setAccessibleName(title);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    auto* heading = shell::headingText(title, this);
    heading->setWordWrap(true);
    lines->addWidget(heading);
    lines->addWidget(shell::softText(tr("What sends a line of text for each reading can be watched. "
                                        "Say how it is connected and what its lines look like; the maker's "
                                        "instructions name port and speed."),
                                     this));
    if (readsAir()) {
        lines->addWidget(shell::softText(GaugeWords::onlyPpm(), this));
    }
    m_choiceHome = new QWidget(this);
    (new QVBoxLayout(m_choiceHome))->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_choiceHome);
    addConnection(lines);
    addPattern(lines);
    addAsking(lines);
    addButtons(lines);
    listProfiles();
    showProfile(newProfile());
}

ProfilesPanel::~ProfilesPanel() = default;

GaugeProfile ProfilesPanel::newProfile() const {
    GaugeProfile profile;
    profile.pattern.family = m_reads;
    return profile;
}

std::vector<quantity::UnitCode> ProfilesPanel::units() const {
    if (readsAir()) {
        return {quantity::UnitCode::Ppm};
    }
    const auto all = quantity::unitsOf(m_reads);
    return {all.begin(), all.end()};
}

input::Editor* ProfilesPanel::keep(input::Editor* editor, const QString& label, const char* name) {
    editor->setLabel(label, readsAir() ? tr("Set up, carbon monoxide") : tr("Set up"));
    editor->setObjectName(QLatin1String(name));
    return editor;
}

void ProfilesPanel::addConnection(QVBoxLayout* lines) {
    auto* fields = new shell::Fields(2, this);
    m_name = keep(input::makeTextEditor(fields),
                  readsAir() ? tr("Name of the instrument") : tr("Name of the gauge"), "profileName");
    m_kind = keep(
        input::makeListEditor(fields, {{QStringLiteral("serial"), GaugeWords::kind(SourceKind::Serial)},
                                       {QStringLiteral("network"), GaugeWords::kind(SourceKind::Network)}}),
        tr("How it is connected"), "profileKind");
    m_port = keep(input::makeTextEditor(fields), tr("Serial port"), "profilePort");
    m_speed = keep(input::makeTextEditor(fields), tr("Speed, bits a second"), "profileSpeed");
    m_host = keep(input::makeTextEditor(fields), tr("Host"), "profileHost");
    m_networkPort =
        keep(input::makeTextEditor(fields), tr("Number of the network port"), "profileNetworkPort");
    for (auto* editor : {m_name, m_kind, m_port, m_speed, m_host, m_networkPort}) {
        fields->add(editor);
    }
    lines->addWidget(fields);
    connect(m_kind, &input::Editor::committed, this, &ProfilesPanel::showKind);
}

void ProfilesPanel::addPattern(QVBoxLayout* lines) {
    auto* fields = new shell::Fields(2, this);
    m_pattern = keep(input::makeTextEditor(fields), tr("What a line looks like"), "profilePattern");
    m_mark = keep(input::makeListEditor(fields, {{QStringLiteral("point"), tr("a point: 20.55")},
                                                 {QStringLiteral("comma"), tr("a comma: 20,55")}}),
                  tr("Decimal mark"), "profileMark");
    m_unit = keep(input::makeListEditor(fields, unitChoices(units())), tr("Unit, where the lines name none"),
                  "profileUnit");
    m_resolution = keep(input::makeQuantityEditor(fields, m_reads), tr("Smallest step of its display"),
                        "profileResolution");
    fields->add(m_pattern, 2);
    fields->add(m_mark);
    fields->add(m_unit);
    fields->add(m_resolution);
    lines->addWidget(fields);
    lines->addWidget(shell::softText(
        tr("{value} is the reading, {unit} its unit, {second} another reading, {time} a time, {skip} "
           "anything; all else stands for itself."),
        this));
    for (auto* editor : {m_pattern, m_mark, m_unit}) {
        connect(editor, &input::Editor::committed, this, &ProfilesPanel::showHeard);
        connect(editor, &input::Editor::edited, this, &ProfilesPanel::showHeard);
    }
}

void ProfilesPanel::addAsking(QVBoxLayout* lines) {
    auto* fields = new shell::Fields(2, this);
    m_ask =
        keep(input::makeTextEditor(fields), tr("What it is asked, if it answers only then"), "profileAsk");
    m_askEvery =
        keep(input::makeTextEditor(fields), tr("Asked every so many milliseconds"), "profileAskEvery");
    fields->add(m_ask);
    fields->add(m_askEvery);
    lines->addWidget(fields);
    lines->addWidget(shell::softText(tr("Nothing is sent to it while this is empty. \\r and \\n end a line, "
                                        "\\t is a tab, \\xHH any byte, \\\\ a backslash."),
                                     this));
}

bool ProfilesPanel::takeAsking(GaugeProfile& profile) const {
    const auto bytes = askBytes(m_ask->text());
    m_ask->setProblem(bytes ? QString()
                            : tr("After a backslash r, n, t, x with two digits of 0 to f, or another one; "
                                 "%1 bytes at most.")
                                  .arg(kLongestAsk));
    bool isNumber = false;
    const int every = m_askEvery->text().trimmed().toInt(&isNumber);
    const bool isEvery = isNumber && every >= kSoonestAsk && every <= kLatestAsk;
    const bool isAsked = bytes && !bytes->isEmpty();
    m_askEvery->setProblem(isEvery || !isAsked
                               ? QString()
                               : tr("A whole number from %1 to %2.").arg(kSoonestAsk).arg(kLatestAsk));
    profile.ask = m_ask->text().toStdString();
    profile.askEvery = isEvery ? every : profile.askEvery;
    return bytes && (isEvery || !isAsked);
}

/// Both kinds may be set up on one sheet.
void ProfilesPanel::setWords(shell::KeyButton* button, const QString& text) const {
    button->setWords(text);
    if (readsAir()) {
        button->setAccessibleName(tr("%1, carbon monoxide").arg(text));
    }
}

void ProfilesPanel::addButtons(QVBoxLayout* lines) {
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    const auto add = [&](const QString& text, shell::ButtonKind kind, const char* name, auto pressed) {
        auto* button = new shell::KeyButton(text, kind, this);
        button->setObjectName(QLatin1String(name));
        setWords(button, text);
        connect(button, &QPushButton::clicked, this, pressed);
        buttons->addWidget(button);
        return button;
    };
    m_listen = add(tr("Listen"), shell::ButtonKind::Plain, "listenButton", &ProfilesPanel::toggleListening);
    m_guess = add(tr("Guess from what came"), shell::ButtonKind::Plain, "guessButton", &ProfilesPanel::guess);
    add(readsAir() ? tr("Keep this instrument") : tr("Keep this gauge"), shell::ButtonKind::Primary,
        "saveProfileButton", &ProfilesPanel::save);
    m_remove = add(tr("Remove it"), shell::ButtonKind::Quiet, "removeProfileButton", &ProfilesPanel::remove);
    lines->addLayout(buttons);
    m_state = shell::bodyText({}, this);
    m_state->setObjectName(QStringLiteral("listenState"));
    m_lines = shell::bodyText({}, this);
    m_lines->setObjectName(QStringLiteral("heardLines"));
    lines->addWidget(m_state);
    lines->addWidget(m_lines);
    m_state->hide();
    m_lines->hide();
}

void ProfilesPanel::takeFocus() {
    m_name->focusTarget()->setFocus();
}

void ProfilesPanel::listProfiles() {
    std::vector<input::ChoiceItem> choices{{QStringLiteral("new"), tr("a new one")}};
    for (std::size_t i = 0; i < m_profiles.size(); ++i) {
        choices.push_back({QString::number(i), profileText(m_profiles[i].name)});
    }
    delete m_choice;
    m_choice = keep(input::makeListEditor(m_choiceHome, choices),
                    readsAir() ? tr("Instrument to set up") : tr("Gauge to set up"), "profileChoice");
    m_choice->setText(m_at < 0 ? QStringLiteral("new") : QString::number(m_at));
    m_choiceHome->layout()->addWidget(m_choice);
    connect(m_choice, &input::Editor::committed, this, [this](const QString& code) {
        bool isNumber = false;
        const int at = code.toInt(&isNumber);
        m_at = isNumber ? at : -1;
        showProfile(m_at < 0 ? newProfile() : m_profiles[static_cast<std::size_t>(m_at)]);
    });
}

void ProfilesPanel::showProfile(const GaugeProfile& profile) {
    stopListening();
    m_heard.clear();
    m_name->setText(profileText(profile.name));
    m_kind->setText(profile.kind == SourceKind::Network ? QStringLiteral("network")
                                                        : QStringLiteral("serial"));
    m_port->setText(profileText(profile.port));
    m_speed->setText(QString::number(profile.speed));
    m_host->setText(profileText(profile.host));
    m_networkPort->setText(profile.networkPort == 0 ? QString() : QString::number(profile.networkPort));
    m_pattern->setText(profileText(profile.pattern.text));
    m_mark->setText(profile.pattern.mark == quantity::DecimalMark::Comma ? QStringLiteral("comma")
                                                                         : QStringLiteral("point"));
    m_unit->setText(profile.pattern.unit ? profileText(std::string(quantity::unitText(*profile.pattern.unit)))
                                         : QString());
    m_ask->setText(profileText(profile.ask));
    m_askEvery->setText(QString::number(profile.askEvery));
    m_resolution->setText(profileText(profile.resolution.text));
    if (profile.resolution.unit != quantity::UnitCode::None) {
        m_resolution->setUnit(profile.resolution.unit);
    }
    for (auto* editor :
         {m_name, m_port, m_speed, m_host, m_networkPort, m_pattern, m_resolution, m_ask, m_askEvery}) {
        editor->setProblem({});
    }
    m_remove->setEnabled(m_at >= 0);
    showKind();
    showHeard();
}

void ProfilesPanel::showKind() {
    const bool isNetwork = m_kind->text() == QStringLiteral("network");
    m_port->setVisible(!isNetwork);
    m_speed->setVisible(!isNetwork);
    m_host->setVisible(isNetwork);
    m_networkPort->setVisible(isNetwork);
}

exchange::LinePattern ProfilesPanel::patternAsTyped() const {
    // What has no field here stays as it is.
    exchange::LinePattern pattern =
        m_at < 0 ? newProfile().pattern : m_profiles[static_cast<std::size_t>(m_at)].pattern;
    pattern.text = m_pattern->text().toStdString();
    pattern.mark = m_mark->text() == QStringLiteral("comma") ? quantity::DecimalMark::Comma
                                                             : quantity::DecimalMark::Point;
    pattern.unit = unitNamed(m_unit->text(), units());
    return pattern;
}

std::optional<int> ProfilesPanel::wholeNumber(input::Editor* editor, int most) const {
    bool isNumber = false;
    const int number = editor->text().trimmed().toInt(&isNumber);
    const bool isGood = isNumber && number > 0 && number <= most;
    editor->setProblem(isGood ? QString() : tr("A whole number from 1 to %1.").arg(most));
    return isGood ? std::optional(number) : std::nullopt;
}

std::optional<GaugeProfile> ProfilesPanel::asTyped(bool wantsPattern) {
    GaugeProfile profile = m_at < 0 ? newProfile() : m_profiles[static_cast<std::size_t>(m_at)];
    const auto filled = [](input::Editor* editor, const QString& problem) {
        const bool isFilled = !editor->text().trimmed().isEmpty();
        editor->setProblem(isFilled ? QString() : problem);
        return isFilled;
    };
    bool isGood = true;
    if (m_kind->text() == QStringLiteral("network")) {
        profile.kind = SourceKind::Network;
        const auto port = wholeNumber(m_networkPort, kMostPort);
        isGood = filled(m_host, tr("Name or address of what sends the readings.")) && port.has_value();
        profile.host = m_host->text().trimmed().toStdString();
        profile.networkPort = port.value_or(0);
    } else {
        profile.kind = SourceKind::Serial;
        const auto speed = wholeNumber(m_speed, kMostSpeed);
        isGood = filled(m_port, tr("The port's name, such as /dev/ttyUSB0.")) && speed.has_value();
        profile.port = m_port->text().trimmed().toStdString();
        profile.speed = speed.value_or(0);
    }
    isGood = takeAsking(profile) && isGood;
    if (!wantsPattern) {
        return isGood ? std::optional(profile) : std::nullopt;
    }
    profile.pattern = patternAsTyped();
    const auto matcher = exchange::LineMatcher::of(profile.pattern);
    m_pattern->setProblem(matcher ? QString() : GaugeWords::refusal(matcher.error()));
    profile.name = m_name->text().trimmed().toStdString();
    const bool isNamed = filled(m_name, tr("A name to choose it by."));
    profile.resolution = {m_resolution->text().trimmed().toStdString(), m_resolution->unit()};
    const auto step = profile.resolution.value();
    const auto known = units();
    const bool isUnit = std::find(known.begin(), known.end(), profile.resolution.unit) != known.end();
    const bool isStep = profile.resolution.text.empty() || (step && step->toDouble() > 0 && isUnit);
    m_resolution->setProblem(isStep ? QString()
                             : !isUnit
                                 ? GaugeWords::onlyPpm()
                                 : tr("A figure above nought, or nothing: then its last digit counts."));
    return isGood && matcher && isNamed && isStep ? std::optional(profile) : std::nullopt;
}

void ProfilesPanel::toggleListening() {
    if (m_source) {
        stopListening();
        showHeard();
        return;
    }
    auto profile = asTyped(false);
    if (!profile) {
        return;
    }
    // Lines are shown as they come and read by the pattern in the field; the source's own reads nothing here.
    profile->pattern = {};
    auto source = makeSource(*profile, m_clock);
    if (!source) {
        return;
    }
    m_listensTo = *profile;
    m_source = std::move(*source);
    m_heard.clear();
    connect(m_source.get(), &Source::came, this, &ProfilesPanel::hear);
    connect(m_source.get(), &Source::stateChanged, this, &ProfilesPanel::showHeard);
    setWords(m_listen, tr("Stop listening"));
    m_source->start();
    showHeard();
}

void ProfilesPanel::stopListening() {
    m_source.reset();
    setWords(m_listen, tr("Listen"));
}

void ProfilesPanel::hear(const QByteArray& line) {
    m_heard.push_back(line);
    while (m_heard.size() > kLinesShown) {
        m_heard.pop_front();
    }
    showHeard();
}

QString ProfilesPanel::refusalText(const exchange::LineRefusal& refusal) const {
    const bool isUnit = readsAir() && refusal.fault == exchange::LineFault::UnitUnknown;
    return isUnit ? QStringLiteral("%1. %2").arg(GaugeWords::refusal(refusal), GaugeWords::onlyPpm())
                  : GaugeWords::refusal(refusal);
}

void ProfilesPanel::showHeard() {
    m_state->setVisible(m_source != nullptr);
    if (m_source) {
        m_state->setText(GaugeWords::state(*m_source, m_listensTo));
    }
    m_guess->setEnabled(!m_heard.empty());
    const auto matcher = exchange::LineMatcher::of(patternAsTyped());
    m_pattern->setProblem(matcher ? QString() : GaugeWords::refusal(matcher.error()));
    QStringList told;
    for (const QByteArray& line : m_heard) {
        const QString came = GaugeWords::line(line);
        if (!matcher) {
            told << tr("“%1”").arg(came);
            continue;
        }
        const auto reading =
            matcher->read(std::string_view(line.constData(), static_cast<std::size_t>(line.size())));
        told << (reading ? tr("“%1”: read as %2").arg(came, m_words.figure({reading->value, reading->unit}))
                         : tr("“%1”: not read. %2").arg(came, refusalText(reading.error())));
    }
    m_lines->setText(told.join(u'\n'));
    m_lines->setVisible(!told.isEmpty());
}

void ProfilesPanel::guess() {
    std::vector<std::string> lines;
    for (const QByteArray& line : m_heard) {
        lines.push_back(line.toStdString());
    }
    const auto found = exchange::guessPattern(lines, m_reads);
    if (!found) {
        m_pattern->setProblem(
            tr("No pattern fits most of these lines: put {value} where the reading stands."));
        return;
    }
    m_pattern->setText(profileText(found->text));
    m_mark->setText(found->mark == quantity::DecimalMark::Comma ? QStringLiteral("comma")
                                                                : QStringLiteral("point"));
    showHeard();
}

void ProfilesPanel::save() {
    const auto profile = asTyped(true);
    if (!profile) {
        return;
    }
    stopListening();
    if (m_at < 0) {
        m_profiles.push_back(*profile);
        m_at = static_cast<int>(m_profiles.size()) - 1;
    } else {
        m_profiles[static_cast<std::size_t>(m_at)] = *profile;
    }
    listProfiles();
    showProfile(*profile);
    Q_EMIT profilesChanged(m_profiles);
}

void ProfilesPanel::remove() {
    if (m_at < 0) {
        return;
    }
    m_profiles.erase(m_profiles.begin() + m_at);
    m_at = -1;
    listProfiles();
    showProfile(newProfile());
    Q_EMIT profilesChanged(m_profiles);
}

}  // namespace hearth::ui::gauge
