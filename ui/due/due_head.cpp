// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_head.h"

#include "core/base/id.h"
#include "ui/due/due_text.h"
#include "ui/due/strip.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace hearth::ui::due {

using calendar::DueState;
using look::Role;
using words::qstring;

namespace {

constexpr int kChipHigh = 34;
constexpr int kChipShape = 16;
constexpr int kFieldLeast = 96;  // six beside each other in the smallest window

const QString kView = QStringLiteral("dueView");
const QString kLandlord = QStringLiteral("dueLandlord");
const QString kAgent = QStringLiteral("dueAgent");
const QString kArea = QStringLiteral("dueArea");
const QString kEngineer = QStringLiteral("dueEngineer");
const QString kOrder = QStringLiteral("dueOrder");

template <class Identity>
std::optional<Identity> idOf(const QString& code) {
    const auto bytes = uuidFromText(code.toStdString());
    return bytes ? std::optional(Identity{*bytes}) : std::nullopt;
}

template <class Identity>
QString codeText(const std::optional<Identity>& id) {
    return id ? qstring(id->text()) : QString();
}

std::vector<input::ChoiceItem> itemsOf(const QString& all, const std::vector<store::DueChoice>& choices,
                                       bool byName) {
    std::vector<input::ChoiceItem> items{{QString(), all}};
    for (const auto& choice : choices) {
        const QString code = byName ? qstring(choice.name) : qstring(uuidText(choice.id));
        items.push_back({code, QStringLiteral("%1 (%2)").arg(qstring(choice.name)).arg(choice.premises)});
    }
    return items;
}

}  // namespace

CountChip::CountChip(const QString& word, const QString& key, QWidget* parent)
    : QAbstractButton(parent), m_word(word), m_key(key) {
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setToolTip(m_key);
    setCount(0);
}

CountChip::CountChip(std::optional<DueState> state, int digit, QWidget* parent)
    : CountChip(state ? stateWord(*state) : tr("Everything"), QStringLiteral("Alt+%1").arg(digit), parent) {
    m_state = state;
    setCheckable(true);
}

void CountChip::setCount(std::optional<int> count) {
    setCount(count, m_word);
}

void CountChip::setCount(std::optional<int> count, const QString& word) {
    m_count = count;
    m_word = word;
    setAccessibleName(QStringLiteral("%1: %2").arg(m_word, count ? number() : tr("being counted")));
    setAccessibleDescription(m_key);
    updateGeometry();
    update();
}

QString CountChip::number() const {
    return m_count ? QString::number(*m_count) : QStringLiteral("…");
}

QSize CountChip::sizeHint() const {
    const int figure = QFontMetrics(look::font(look::TypeRole::Heading)).horizontalAdvance(number());
    const int name = QFontMetrics(look::font(look::TypeRole::Small)).horizontalAdvance(m_word);
    return {(m_state ? kChipShape + 4 : 0) + figure + 5 + name + 2 * look::kGap, kChipHigh};
}

void CountChip::paintEvent(QPaintEvent*) {
    const auto scheme = shell::currentScheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    const bool none = m_count.value_or(0) == 0 && !isChecked();
    painter.setPen(
        QPen(look::colour(isChecked() ? Role::Key : Role::SheetEdge, scheme), isChecked() ? 2 : 1));
    painter.setBrush(look::colour(isChecked() || underMouse() ? Role::KeyGround : Role::Sheet, scheme));
    painter.drawRoundedRect(box, 4, 4);
    if (hasFocus()) {
        painter.setPen(QPen(look::colour(Role::Focus, scheme), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(2, 2, -2, -2), 3, 3);
    }
    int x = look::kGap;
    if (m_state) {
        drawState(painter, QRectF(x, 0, kChipShape, height()), *m_state, scheme);
        x += kChipShape + 4;
    }
    painter.setFont(look::font(look::TypeRole::Heading));
    painter.setPen(
        look::colour(none || !m_state ? (none ? Role::SoftInk : Role::Ink) : inkOf(*m_state), scheme));
    painter.drawText(QRect(x, 0, width(), height()), Qt::AlignVCenter | Qt::AlignLeft, number());
    x += QFontMetrics(painter.font()).horizontalAdvance(number()) + 5;
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(none ? Role::SoftInk : Role::Ink, scheme));
    painter.drawText(QRect(x, 1, width() - x, height()), Qt::AlignVCenter | Qt::AlignLeft, m_word);
}

void CountChip::keyPressEvent(QKeyEvent* event) {
    if (shell::isEnter(*event)) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

DueHead::DueHead(Choices choices, QWidget* parent) : QWidget(parent), m_choices(std::move(choices)) {
    setObjectName(QStringLiteral("dueHead"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    auto* chips = new QWidget(this);
    addChips(chips);
    auto* fields = new QWidget(this);
    m_fields = new QHBoxLayout(fields);
    m_fields->setContentsMargins(0, 0, 0, 0);
    m_fields->setSpacing(look::kGap);
    auto* save = new shell::KeyButton(tr("Save view"), QKeySequence(Qt::CTRL | Qt::Key_S),
                                      shell::ButtonKind::Quiet, fields);
    save->setObjectName(QStringLiteral("saveViewButton"));
    connect(save, &QPushButton::clicked, this, &DueHead::saveAsked);
    auto* forget = new shell::KeyButton(tr("Forget view"), shell::ButtonKind::Quiet, fields);
    forget->setObjectName(QStringLiteral("forgetViewButton"));
    forget->hide();
    connect(forget, &QPushButton::clicked, this, &DueHead::forgetAsked);
    m_forget = forget;
    m_fields->addWidget(save, 0, Qt::AlignBottom);
    m_fields->addWidget(forget, 0, Qt::AlignBottom);
    lines->addWidget(chips);
    lines->addWidget(fields);
}

void DueHead::addChips(QWidget* row) {
    auto* box = new shell::FlowLayout(row, look::kGap / 2 + 2);
    const auto add = [&](std::optional<DueState> state, int digit) {
        auto* chip = new CountChip(state, digit, row);
        const auto code = state ? calendar::codeOf(*state) : std::string_view("all");
        chip->setObjectName(QStringLiteral("count_") + shell::coded(code));
        connect(chip, &QAbstractButton::clicked, this, [this, state] { choose(state); });
        auto* key = new QShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(digit)), this);
        key->setContext(Qt::WindowShortcut);
        connect(key, &QShortcut::activated, this, [this, state] { choose(state); });
        box->addWidget(chip);
        m_chips.push_back(chip);
    };
    add(std::nullopt, 0);
    int digit = 1;
    for (const auto state : calendar::kDueStates) {
        add(state, digit++);
    }
    m_duties = new CountChip(tr("other duties"), QStringLiteral("Ctrl+U"), row);
    m_duties->setObjectName(QStringLiteral("count_duties"));
    m_duties->setCount(std::nullopt);
    connect(m_duties, &QAbstractButton::clicked, this, &DueHead::dutiesAsked);
    box->addWidget(m_duties);
}

void DueHead::setDuties(const store::DutyCount& count) {
    m_duties->setCount(count.open, count.overdue == 0 ? tr("other duties")
                                                      : tr("other duties, %1 overdue").arg(count.overdue));
}

/// A second press on a state goes back to everything.
void DueHead::choose(std::optional<DueState> state) {
    const bool again = state && m_filter.states == std::vector<DueState>{*state};
    m_filter.states = state && !again ? std::vector<DueState>{*state} : std::vector<DueState>{};
    m_view.clear();
    put();
    Q_EMIT changed();
}

void DueHead::offerIn(const QString& name, const QString& label, std::vector<input::ChoiceItem> items) {
    std::vector<std::pair<QString, QString>> plain;
    for (const auto& item : items) {
        plain.emplace_back(item.code, item.label);
    }
    auto& field = m_editors[name];
    if (field.editor != nullptr && field.items == plain) {
        return;
    }
    auto* made = input::makeListEditor(this, items);
    if (field.editor == nullptr) {
        join(name, label, made);
    } else {
        dress(name, label, made);
        const bool focused = field.editor->focusTarget()->hasFocus();
        delete m_fields->replaceWidget(field.editor, made);
        m_fields->setAlignment(made, Qt::AlignBottom);
        field.editor->hide();
        field.editor->deleteLater();
        if (focused) {
            made->focusTarget()->setFocus(Qt::OtherFocusReason);
        }
    }
    field = {made, std::move(plain)};
}

void DueHead::offerBy(store::DueBy by, const QString& name, const QString& label, const QString& all) {
    if (m_editors.count(name) > 0) {
        return;
    }
    auto* made = input::makeListEditor(this, {{QString(), all}}, [this, by, all] {
        return itemsOf(all, m_choices(by), by == store::DueBy::Area);
    });
    m_editors[name] = {made, {}};
    join(name, label, made);
}

void DueHead::dress(const QString& name, const QString& label, input::Editor* made) {
    made->setObjectName(name);
    made->setLabel(label);
    made->setText(codeIn(name));
    made->setMinimumWidth(kFieldLeast);
    connect(made, &input::Editor::committed, this, [this, name](const QString& code) { take(name, code); });
}

void DueHead::join(const QString& name, const QString& label, input::Editor* made) {
    dress(name, label, made);
    m_fields->insertWidget(static_cast<int>(m_editors.size()) - 1, made, 1, Qt::AlignBottom);
}

void DueHead::offer(const std::vector<DueView>& views) {
    std::vector<input::ChoiceItem> named{{QString(), views.empty() ? tr("none saved yet") : tr("none")}};
    for (const auto& view : views) {
        named.push_back({view.name, view.name});
    }
    using store::DueSort;
    offerIn(kView, tr("View"), named);
    offerBy(store::DueBy::Landlord, kLandlord, tr("Landlord"), tr("all"));
    offerBy(store::DueBy::Agent, kAgent, tr("Agent"), tr("all"));
    offerBy(store::DueBy::Area, kArea, tr("Area"), tr("all"));
    offerBy(store::DueBy::Engineer, kEngineer, tr("Booked with"), tr("anybody"));
    offerIn(kOrder, tr("Order"),
            {{codeOf(DueSort::Need), tr("what to do next")},
             {codeOf(DueSort::Deadline), tr("deadline")},
             {codeOf(DueSort::Address), tr("address")},
             {codeOf(DueSort::Postcode), tr("postcode")},
             {codeOf(DueSort::Landlord), tr("landlord")},
             {codeOf(DueSort::LastCheck), tr("last check")}});
    put();
}

QString DueHead::codeIn(const QString& name) const {
    return name == kView       ? m_view
           : name == kLandlord ? codeText(m_filter.landlord)
           : name == kAgent    ? codeText(m_filter.agent)
           : name == kArea     ? qstring(m_filter.outward)
           : name == kEngineer ? codeText(m_filter.engineer)
                               : codeOf(m_sort);
}

void DueHead::take(const QString& name, const QString& code) {
    if (name == kView) {
        Q_EMIT viewChosen(code);
        return;
    }
    if (name == kLandlord) {
        m_filter.landlord = idOf<reg::PartyId>(code);
    } else if (name == kAgent) {
        m_filter.agent = idOf<reg::PartyId>(code);
    } else if (name == kArea) {
        m_filter.outward = code.toStdString();
    } else if (name == kEngineer) {
        m_filter.engineer = idOf<reg::EngineerId>(code);
    } else {
        m_sort = sortFromCode(code);
    }
    m_view.clear();
    put();
    Q_EMIT changed();
}

void DueHead::put() {
    for (const auto& [name, field] : m_editors) {
        field.editor->setText(codeIn(name));
    }
    for (auto* chip : m_chips) {
        const auto state = chip->state();
        const auto& states = m_filter.states;
        chip->setChecked(state ? std::find(states.begin(), states.end(), *state) != states.end()
                               : states.empty());
    }
    m_forget->setVisible(!m_view.isEmpty());
}

void DueHead::setCounts(const store::DueCounts& counts) {
    int all = 0;
    for (const auto state : calendar::kDueStates) {
        all += state == DueState::NoDuty ? 0 : counts.at(state);
    }
    for (auto* chip : m_chips) {
        if (chip->state() == DueState::Overdue) {
            chip->setCount(counts.at(DueState::Overdue), overdueWord(counts.overdueBooked));
        } else {
            chip->setCount(chip->state() ? counts.at(*chip->state()) : all);
        }
    }
}

void DueHead::show(const store::DueFilter& filter, store::DueSort sort, const QString& view) {
    m_filter = filter;
    m_sort = sort;
    m_view = view;
    put();
}

void DueHead::setText(const QString& text) {
    m_filter.text = text.toStdString();
    m_view.clear();
    put();
}

}  // namespace hearth::ui::due
