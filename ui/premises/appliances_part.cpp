// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/appliances_part.h"

#include "ui/premises/appliance_form.h"
#include "ui/premises/year_plots.h"
#include "ui/shell/attachments_part.h"
#include "ui/shell/line_list.h"
#include "ui/shell/plot_view.h"
#include "ui/words/kept_words.h"

namespace hearth::ui::premises {

using words::qstring;

namespace {

shell::Line lineOf(const reg::Appliance& appliance, const words::Words& words) {
    shell::Line line;
    line.key = qstring(appliance.id.text());
    line.title = applianceName(words, appliance);
    if (!appliance.place.empty()) {
        line.title += QStringLiteral(", ") + qstring(appliance.place);
    }
    QStringList what{qstring(appliance.make), qstring(appliance.model), qstring(appliance.serial)};
    what.removeAll(QString());
    line.detail = what.join(QStringLiteral(" · "));
    if (appliance.removedOn || !appliance.removedOnText.empty()) {
        line.right = AppliancesPart::tr("removed");
        line.rightDetail = appliance.removedOn ? words.shortDate(*appliance.removedOn) : QString();
    } else {
        line.right =
            appliance.flue == reg::FlueType::NotSaid ? QString() : words::flueType(words, appliance.flue);
        line.rightDetail =
            appliance.owner == reg::Owner::NotSaid ? QString() : words::owner(words, appliance.owner);
    }
    return line;
}

}  // namespace

AppliancesPart::AppliancesPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_list(new shell::LineList(tr("Appliances"), tr("No appliances yet."), this)),
      m_form(new ApplianceForm(context, this)),
      m_attachments(new shell::AttachmentsPart(context, tr("Appliance"), this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Appliances"), this));
    m_list->setObjectName(QStringLiteral("appliancesList"));
    m_list->setGrowing(true);
    lines->addWidget(m_list);
    makeButtons(lines);
    m_yearPlots = new shell::PlotView(this);
    lines->addWidget(m_yearPlots);
    m_yearsTold = shell::softText({}, this);
    m_yearsTold->setObjectName(QStringLiteral("yearsText"));
    m_yearsTold->hide();
    lines->addWidget(m_yearsTold);
    lines->addWidget(m_form);
    lines->addWidget(m_attachments);
    connect(m_list, &shell::LineList::moved, this, &AppliancesPart::showRow);
    connect(m_list, &shell::LineList::opened, this, [this] { m_form->takeFocus(); });
    m_form->whenKept([this](const reg::Appliance& appliance) {
        fillList();
        m_list->setCurrentKey(qstring(appliance.id.text()));
        m_attachments->setVisible(true);
        m_attachments->show("appliances", appliance.id.bytes);
        m_alike->setVisible(true);
        m_bin->setVisible(true);
        m_years->setVisible(true);
        showYears(&appliance);
    });
}

void AppliancesPart::makeButtons(QVBoxLayout* lines) {
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    const auto button = [&](const QString& text, const char* name) {
        auto* made = new shell::KeyButton(text, shell::ButtonKind::Quiet, this);
        made->setObjectName(QString::fromLatin1(name));
        made->setEnabled(!m_context.store.isReadOnly());
        row->addWidget(made);
        return made;
    };
    m_add = button(tr("Add an appliance"), "addApplianceButton");
    m_alike = button(tr("Another like this"), "alikeApplianceButton");
    m_bin = button(tr("Put it into the bin"), "binApplianceButton");
    m_years = new shell::KeyButton({}, QKeySequence(Qt::CTRL | Qt::Key_Y), shell::ButtonKind::Quiet, this);
    m_years->setObjectName(QStringLiteral("yearsButton"));
    row->addWidget(m_years);
    row->addStretch(1);
    lines->addLayout(row);
    connect(m_years, &QPushButton::clicked, this, &AppliancesPart::toggleYears);
    connect(m_add, &QPushButton::clicked, this, &AppliancesPart::add);
    connect(m_alike, &QPushButton::clicked, this, &AppliancesPart::addAnotherLikeIt);
    connect(m_bin, &QPushButton::clicked, this, &AppliancesPart::putIntoBin);
}

void AppliancesPart::show(reg::PremisesId id) {
    m_premises = id;
    m_installations = m_context.store.installations(id).value_or(std::vector<reg::Installation>());
    m_add->setEnabled(!m_context.store.isReadOnly() && !m_installations.empty());
    fillList();
    showRow(m_list->currentRow());
}

void AppliancesPart::fillList() {
    const auto appliances = m_context.store.appliancesOf(m_premises, store::Removed::Included);
    m_appliances = appliances.value_or(std::vector<reg::Appliance>());
    m_list->setEmptyText(appliances ? tr("No appliances yet.") : m_context.words.error(appliances.error()));
    std::vector<shell::Line> lines;
    lines.reserve(m_appliances.size());
    for (const auto& appliance : m_appliances) {
        lines.push_back(lineOf(appliance, m_context.words));
    }
    m_list->setLines(std::move(lines));
}

const reg::Appliance* AppliancesPart::current() const {
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_appliances.at(static_cast<std::size_t>(row));
}

void AppliancesPart::showRow(int /*row*/) {
    const auto* appliance = current();
    m_form->setVisible(appliance != nullptr);
    m_attachments->setVisible(appliance != nullptr);
    m_alike->setVisible(appliance != nullptr);
    m_bin->setVisible(appliance != nullptr);
    m_years->setVisible(appliance != nullptr);
    showYears(appliance);
    if (appliance != nullptr) {
        m_form->show(*appliance);
        m_attachments->show("appliances", appliance->id.bytes);
    }
}

reg::Appliance AppliancesPart::blank() const {
    reg::Appliance appliance;
    appliance.installation = m_installations.front().id;
    appliance.gas = m_installations.front().gas;
    appliance.position = m_appliances.empty() ? 0 : m_appliances.back().position + 1;
    return appliance;
}

void AppliancesPart::showForm(const reg::Appliance& appliance) {
    m_list->setCurrentRow(-1);
    m_attachments->setVisible(false);
    m_alike->setVisible(false);
    m_bin->setVisible(false);
    m_years->setVisible(false);
    showYears(nullptr);
    m_form->show(appliance);
    m_form->setVisible(true);
    m_form->takeFocus();
}

void AppliancesPart::toggleYears() {
    m_yearsOpen = !m_yearsOpen;
    showYears(current());
}

/// Read from the store when it is asked for: an appliance may have many visits.
void AppliancesPart::showYears(const reg::Appliance* appliance) {
    m_years->setWords(m_yearsOpen ? tr("Put the years away") : tr("Over the years"));
    record::Plots plots;
    QString told;
    if (m_yearsOpen && appliance != nullptr) {
        const auto years = yearPlotsOf(m_context.store, m_context.words, *appliance, m_premises);
        plots = years ? years->plots : plots;
        told = years ? years->told.join(u'\n') : m_context.words.error(years.error());
    }
    m_yearPlots->show(plots);
    m_yearPlots->setAccessibleDescription(told);
    m_yearsTold->setText(told);
    m_yearsTold->setVisible(!told.isEmpty());
}

void AppliancesPart::add() {
    showForm(blank());
}

/// What differs from one to the next is left out: serial number, dates, and whatever was written of it.
void AppliancesPart::addAnotherLikeIt() {
    const auto* standing = current();
    if (standing == nullptr) {
        return;
    }
    reg::Appliance alike = *standing;
    alike.id = {};
    alike.position = blank().position;
    alike.serial.clear();
    alike.installedOn.reset();
    alike.installedOnText.clear();
    alike.removedOn.reset();
    alike.removedOnText.clear();
    alike.notes.clear();
    showForm(alike);
    m_form->takeFocus("applianceSerial");
}

void AppliancesPart::putIntoBin() {
    const auto* appliance = current();
    if (appliance == nullptr) {
        return;
    }
    const QString name = applianceName(m_context.words, *appliance);
    const auto done = m_context.store.putIntoBin("appliances", appliance->id.bytes, name.toStdString());
    if (!done) {
        m_context.dialogs.tell(this, tr("It was not put into the bin"), m_context.words.error(done.error()));
        return;
    }
    show(m_premises);
    m_list->setFocus(Qt::OtherFocusReason);
    m_context.navigator.say(tr("%1 is in the bin. Ctrl+Z brings it back.").arg(name));
}

}  // namespace hearth::ui::premises
