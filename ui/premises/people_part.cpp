// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/people_part.h"

#include "ui/premises/person_data.h"
#include "ui/shell/line_list.h"

#include <QCompleter>
#include <QLineEdit>
#include <QStringListModel>

#include <algorithm>

namespace hearth::ui::premises {

using shell::coded;
using words::qstring;

namespace {

constexpr int kOffered = 12;
constexpr int kPeopleColumns = 2;

QString whoAndWhere(const reg::Party& party) {
    QStringList parts{qstring(party.name), qstring(party.address.line1), qstring(party.address.town)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

constexpr reg::RoleKind kRoles[] = {reg::RoleKind::Customer, reg::RoleKind::Landlord,
                                    reg::RoleKind::Tenant,   reg::RoleKind::HomeOwner,
                                    reg::RoleKind::Agent,    reg::RoleKind::ResponsiblePerson};

}  // namespace

PersonRow::PersonRow(const shell::Context& context, reg::RoleKind kind, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_kind(kind),
      m_name(input::makeTextEditor(this)),
      m_names(new QStringListModel(this)),
      m_open(new shell::KeyButton(tr("Details"), shell::ButtonKind::Quiet, this)),
      m_details(new PartyForm(context, context.words.role(kind), this)) {
    setObjectName(QStringLiteral("role_") + coded(reg::codeOf(kind)));
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    row->addWidget(m_name, 1);
    row->addWidget(m_open, 0, Qt::AlignBottom);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addLayout(row);
    lines->addWidget(m_details);
    m_details->layout()->addWidget(makeSaveButton());
    m_details->hide();
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setLabel(context.words.role(kind));
    m_name->setReadOnly(context.store.isReadOnly());
    m_open->setObjectName(QStringLiteral("detailsButton"));
    m_open->setAccessibleName(tr("Details of %1").arg(context.words.role(kind)));
    connect(m_open, &QPushButton::clicked, this, &PersonRow::toggleDetails);
    connect(m_name, &input::Editor::edited, this, &PersonRow::offerKnown);
    shell::keepOnCommit(m_name, m_context.words, [this](const QString& text) { return keepName(text); });
    m_details->whenKept([this](const reg::Party& party) { m_holder = party; });
    if (auto* line = qobject_cast<QLineEdit*>(m_name->focusTarget())) {
        auto* completer = new QCompleter(m_names, this);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        line->setCompleter(completer);
    }
}

QWidget* PersonRow::makeSaveButton() {
    auto* save =
        new shell::KeyButton(tr("Save what is held about them"), shell::ButtonKind::Quiet, m_details);
    save->setObjectName(QStringLiteral("savePersonButton"));
    save->setAccessibleName(tr("%1: save what is held about them").arg(m_context.words.role(m_kind)));
    connect(save, &QPushButton::clicked, this, [this] {
        if (m_holder) {
            saveWhatIsHeld(m_context, this, m_holder->id);
        }
    });
    return save;
}

void PersonRow::offerKnown() {
    const QString typed = m_name->text().trimmed();
    if (typed.isEmpty()) {
        return;
    }
    QStringList names;
    if (const auto parties = m_context.store.parties(typed.toStdString(), kOffered)) {
        for (const auto& party : *parties) {
            names << qstring(party.name);
        }
    }
    names.removeDuplicates();
    m_names->setStringList(names);
}

void PersonRow::toggleDetails() {
    m_details->setVisible(!m_details->isVisibleTo(this));
    if (m_details->isVisibleTo(this)) {
        shell::focusOn(m_details->first());
    }
}

void PersonRow::show(reg::PremisesId premises, const std::optional<reg::Party>& holder) {
    const bool same = m_premises == premises && holder.has_value() == m_holder.has_value();
    m_premises = premises;
    m_holder = holder;
    if (!same) {
        m_details->hide();
    }
    m_name->setProblem({});
    showHolder();
}

void PersonRow::showHolder() {
    m_name->setText(m_holder ? qstring(m_holder->name) : QString());
    m_open->setVisible(m_holder.has_value());
    if (m_holder) {
        m_details->show(*m_holder);
    } else {
        m_details->hide();
    }
}

Result<void> PersonRow::keepName(const QString& typed) {
    const QString name = typed.trimmed();
    if (name.isEmpty()) {
        if (!m_holder) {
            return {};
        }
        const auto removed = m_context.store.removeRole(m_premises, m_kind);
        if (removed) {
            m_holder.reset();
            showHolder();
            Q_EMIT changed();
        }
        return removed;
    }
    if (m_holder && qstring(m_holder->name) == name) {
        return {};
    }
    const auto meant = known(name);
    if (!meant) {
        return tl::unexpected<Error>(meant.error());
    }
    if (*meant) {
        return replaceBy(**meant, false);
    }
    if (!m_holder) {
        reg::Party party;
        party.name = name.toStdString();
        return replaceBy(party, true);
    }
    return rename(name);
}

Result<std::optional<reg::Party>> PersonRow::known(const QString& name) {
    const auto parties = m_context.store.parties(name.toStdString());
    if (!parties) {
        return tl::unexpected<Error>(parties.error());
    }
    std::vector<reg::Party> same;
    std::copy_if(parties->begin(), parties->end(), std::back_inserter(same), [&](const reg::Party& party) {
        return qstring(party.name).compare(name, Qt::CaseInsensitive) == 0 &&
               (!m_holder || party.id != m_holder->id);
    });
    if (same.empty()) {
        return std::nullopt;
    }
    if (same.size() == 1) {
        return same.front();
    }
    QStringList answers;
    for (const auto& party : same) {
        answers << whoAndWhere(party);
    }
    answers << tr("Somebody else of that name");
    const int answer = m_context.dialogs.ask(this, tr("Which of them?"),
                                             tr("More than one is called “%1”.").arg(name), answers, 0);
    const auto index = static_cast<std::size_t>(answer < 0 ? 0 : answer);
    return index < same.size() ? std::optional(same[index]) : std::nullopt;
}

Result<void> PersonRow::rename(const QString& name) {
    const QString before = qstring(m_holder->name);
    const int answer = m_context.dialogs.ask(this, tr("The same, or somebody else?"),
                                             tr("“%1” stands here now; “%2” was typed.").arg(before, name),
                                             {tr("Somebody else"), tr("The same, name corrected")}, 0);
    if (answer < 0) {
        showHolder();
        return {};
    }
    if (answer == 0) {
        reg::Party party;
        party.name = name.toStdString();
        return replaceBy(party, true);
    }
    reg::Party party = *m_holder;
    party.name = name.toStdString();
    if (const auto kept = m_context.store.save(party); !kept) {
        return kept;
    }
    m_holder = party;
    showHolder();
    Q_EMIT changed();
    return {};
}

Result<void> PersonRow::replaceBy(reg::Party party, bool isNew) {
    if (isNew) {
        party.id = {m_context.store.newId()};
        if (const auto kept = m_context.store.save(party); !kept) {
            return kept;
        }
    }
    reg::Role role{{m_context.store.newId()}, m_premises, party.id, m_kind};
    if (m_holder) {
        role.since = m_context.clock.today("Europe/London");  // who held it until then stays in the history
    }
    const auto kept = m_context.store.save(role);
    if (kept) {
        m_holder = party;
        showHolder();
        Q_EMIT changed();
    }
    return kept;
}

PeoplePart::PeoplePart(const shell::Context& context, QWidget* parent) : QWidget(parent), m_context(context) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("People"), this));
    m_problem = shell::bodyText({}, this);
    m_problem->setInk(look::Role::Fail);
    m_problem->hide();
    lines->addWidget(m_problem);
    auto* rows = new shell::Fields(kPeopleColumns, this);
    lines->addWidget(rows);
    for (const auto kind : kRoles) {
        auto* row = new PersonRow(m_context, kind, rows);
        rows->add(row);
        m_rows.emplace_back(kind, row);
        connect(row, &PersonRow::changed, this, &PeoplePart::changed);
        connect(row, &PersonRow::changed, this, &PeoplePart::fillPast);
    }
    m_past = new shell::LineList(tr("Who it was before"), tr("Nobody else so far."), this);
    m_past->setObjectName(QStringLiteral("pastHoldersList"));
    m_past->setGrowing(true);
    m_pastHeading = shell::softText(tr("Who it was before"), this);
    lines->addWidget(m_pastHeading);
    lines->addWidget(m_past);
    makePastButtons(lines);
}

void PeoplePart::makePastButtons(QVBoxLayout* lines) {
    m_pastButtons = new QWidget(this);
    auto* buttons = new QHBoxLayout(m_pastButtons);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->setSpacing(look::kGap);
    auto* save =
        new shell::KeyButton(tr("Save what is held about them"), shell::ButtonKind::Quiet, m_pastButtons);
    save->setObjectName(QStringLiteral("savePastPersonButton"));
    auto* erase =
        new shell::KeyButton(tr("Erase what is held about them"), shell::ButtonKind::Quiet, m_pastButtons);
    erase->setObjectName(QStringLiteral("erasePersonButton"));
    erase->setEnabled(!m_context.store.isReadOnly());
    buttons->addWidget(save);
    buttons->addWidget(erase);
    buttons->addStretch(1);
    lines->addWidget(m_pastButtons);
    connect(save, &QPushButton::clicked, this, [this] {
        if (const auto id = pastPerson()) {
            saveWhatIsHeld(m_context, this, *id);
        }
    });
    connect(erase, &QPushButton::clicked, this, [this] {
        if (const auto id = pastPerson(); id && erasePerson(m_context, this, *id)) {
            fillPast();
        }
    });
}

std::optional<reg::PartyId> PeoplePart::pastPerson() const {
    const int row = m_past->currentRow();
    return row < 0 ? std::nullopt : std::optional(m_pastPeople.at(static_cast<std::size_t>(row)));
}

/// Shown only where there is somebody: most premises have nobody.
void PeoplePart::fillPast() {
    std::vector<shell::Line> lines;
    m_pastPeople.clear();
    for (const auto& held : m_context.store.rolesOf(m_premises).value_or(std::vector<store::RoleLine>())) {
        if (!held.role.until) {
            continue;
        }
        shell::Line line;
        line.key = qstring(held.role.id.text());
        line.title = held.party.name.empty() ? tr("(erased)") : qstring(held.party.name);
        line.detail = m_context.words.role(held.role.kind);
        line.right = tr("until %1").arg(m_context.words.shortDate(*held.role.until));
        if (held.role.since) {
            line.rightDetail = tr("since %1").arg(m_context.words.shortDate(*held.role.since));
        }
        lines.push_back(std::move(line));
        m_pastPeople.push_back(held.party.id);
    }
    m_pastButtons->setVisible(!lines.empty());
    m_past->setVisible(!lines.empty());
    m_pastHeading->setVisible(!lines.empty());
    m_past->setLines(std::move(lines));
}

void PeoplePart::show(reg::PremisesId id) {
    m_premises = id;
    const auto holders = m_context.store.holders(id);
    m_problem->setVisible(!holders);
    if (!holders) {
        m_problem->setText(m_context.words.error(holders.error()));
        return;
    }
    for (const auto& [kind, row] : m_rows) {
        std::optional<reg::Party> holder;
        for (const auto& candidate : *holders) {
            if (candidate.role == kind) {
                holder = candidate.party;
            }
        }
        row->show(id, holder);
    }
    fillPast();
}

}  // namespace hearth::ui::premises
