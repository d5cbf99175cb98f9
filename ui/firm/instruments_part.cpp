// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/instruments_part.h"

#include "ui/shell/line_list.h"

#include <algorithm>

namespace hearth::ui::firm {

using words::qstring;

namespace {

shell::Line lineOf(const reg::Instrument& instrument, const shell::Context& context) {
    shell::Line line;
    line.key = qstring(instrument.id.text());
    line.title = instrument.name.empty() ? hearth::ui::firm::InstrumentsPart::tr("(no name)")
                                         : qstring(instrument.name);
    line.detail = QStringLiteral("%1 · %2").arg(context.words.instrumentKind(instrument.kind),
                                                qstring(instrument.serial));
    if (!instrument.calibrationDue) {
        line.right = hearth::ui::firm::InstrumentsPart::tr("calibration not said");
        return line;
    }
    const int days = calendar::daysBetween(context.clock.today("Europe/London"), *instrument.calibrationDue);
    line.right = context.words.shortDate(*instrument.calibrationDue);
    line.rightDetail =
        days < 0 ? hearth::ui::firm::InstrumentsPart::tr("calibration ran out")
                 : hearth::ui::firm::InstrumentsPart::tr("calibration due in %n day(s)", nullptr, days);
    return line;
}

bool isFound(const shell::Line& line, const QString& search) {
    const QString text = line.title + u' ' + line.detail;
    const QStringList words = search.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}  // namespace

InstrumentsPart::InstrumentsPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_list(new shell::LineList(tr("Instruments"),
                                 tr("No instruments yet. A gauge is needed to judge a test."), this)),
      m_add(new shell::KeyButton(tr("Add an instrument"), shell::ButtonKind::Quiet, this)),
      m_form(new InstrumentForm(context, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Instruments"), this));
    m_list->setObjectName(QStringLiteral("instrumentsList"));
    m_list->setGrowing(true);
    lines->addWidget(m_list);
    lines->addWidget(m_form);
    m_add->setObjectName(QStringLiteral("addInstrumentButton"));
    m_add->setEnabled(!m_context.store.isReadOnly());
    lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_list, &shell::LineList::moved, this, &InstrumentsPart::show);
    connect(m_list, &shell::LineList::opened, this, [this] { m_form->takeFocus(); });
    connect(m_add, &QPushButton::clicked, this, [this] {
        m_form->show(reg::Instrument{});
        m_form->setVisible(true);
        m_form->takeFocus();
    });
    m_form->whenKept([this](const reg::Instrument& instrument) {
        fillList();
        m_list->setCurrentKey(qstring(instrument.id.text()));
    });
}

void InstrumentsPart::fillList() {
    m_instruments.clear();
    const auto instruments = m_context.store.instruments();
    if (!instruments) {
        m_list->setEmptyText(m_context.words.error(instruments.error()));
        m_list->setLines({});
        return;
    }
    std::vector<shell::Line> lines;
    for (const auto& instrument : *instruments) {
        const shell::Line line = lineOf(instrument, m_context);
        if (isFound(line, m_search)) {
            m_instruments.push_back(instrument);
            lines.push_back(line);
        }
    }
    m_list->setLines(std::move(lines));
}

void InstrumentsPart::refresh() {
    fillList();
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    show(m_list->currentRow());
}

void InstrumentsPart::show(int row) {
    const bool has = row >= 0 && row < static_cast<int>(m_instruments.size());
    m_form->setVisible(has);
    if (has) {
        m_form->show(m_instruments[static_cast<std::size_t>(row)]);
    }
}

void InstrumentsPart::search(const QString& text) {
    m_search = text;
    refresh();
}

void InstrumentsPart::open(const std::string& instrument, const char* field) {
    search({});
    if (m_list->setCurrentKey(qstring(instrument))) {
        show(m_list->currentRow());
    }
    m_form->takeFocus(field);
}

void InstrumentsPart::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

}  // namespace hearth::ui::firm
