// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/premises_place.h"

#include "ui/premises/import_assistant.h"
#include "ui/premises/premises_sheet.h"
#include "ui/shell/exporting.h"
#include "ui/shell/kit.h"
#include "ui/shell/line_list.h"

#include <QKeyEvent>
#include <QStackedLayout>

namespace hearth::ui::premises {

using words::qstring;

namespace {

constexpr int kShown = 100;  // of a search: nobody reads more, and each is drawn at every key

QString joined(const QStringList& parts, const QString& between) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(between);
}

shell::Line lineOf(const store::PremisesLine& found, const words::Words& words) {
    const reg::Address& address = found.premises.address;
    shell::Line line;
    line.key = qstring(found.premises.id.text());
    line.title = joined({qstring(address.line1), qstring(address.line2)}, QStringLiteral(", "));
    line.detail = joined({joined({qstring(address.town), qstring(address.postcode)}, QStringLiteral(" ")),
                          qstring(found.customer)},
                         QStringLiteral(" · "));
    line.right = found.lastVisit ? words.shortDate(*found.lastVisit) : QString();
    line.rightDetail =
        found.drafts > 0 ? hearth::ui::premises::PremisesPlace::tr("%n open visit(s)", nullptr, found.drafts)
                         : QString();
    return line;
}

/// All premises, as they come into view.
class AllPremises : public shell::LineSource {
  public:
    explicit AllPremises(const shell::Context& context) : m_context(context) {}

    int count() override {
        m_count = valueOrSaid(m_context.store.premisesCount());
        return m_count;
    }
    std::vector<shell::Line> lines(int first, int count) override {
        std::vector<shell::Line> lines;
        for (const auto& found : valueOrSaid(m_context.store.premisesPage(first, count, m_count))) {
            lines.push_back(lineOf(found, m_context.words));
        }
        return lines;
    }
    int rowOf(const QString& key) override {
        const auto id = uuidFromText(key.toStdString());
        return id ? valueOrSaid(m_context.store.premisesRow({*id})).value_or(-1) : -1;
    }

  private:
    template <class Value>
    Value valueOrSaid(Result<Value> result) {
        if (result) {
            return std::move(*result);
        }
        m_context.navigator.say(m_context.words.error(result.error()));
        return {};
    }

    const shell::Context& m_context;
    int m_count = 0;
};

}  // namespace

PremisesPlace::PremisesPlace(const shell::Context& context, QWidget* parent)
    : Place(parent), m_context(context) {
    setObjectName(QStringLiteral("premisesPlace"));
}

void PremisesPlace::build() {
    auto* browse = new QWidget(this);
    m_list = new shell::LineList(tr("Premises that were found"), {}, browse);  // the tab is called Premises
    m_list->setObjectName(QStringLiteral("premisesList"));
    m_sheet = new PremisesSheet(m_context, browse);
    auto* add = new shell::KeyButton(tr("New premises"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N),
                                     shell::ButtonKind::Plain, browse);
    add->setObjectName(QStringLiteral("newPremisesButton"));
    add->setEnabled(!m_context.store.isReadOnly());
    std::vector<QWidget*> left{m_list, add};
    addFileButtons(left, browse);
    shell::besideSheet(browse, left, m_sheet);
    m_views = new QStackedLayout(this);
    m_views->addWidget(browse);
    connect(add, &QPushButton::clicked, this, &PremisesPlace::startNew);
    connect(m_list, &shell::LineList::moved, this, &PremisesPlace::show);
    connect(m_list, &shell::LineList::opened, this, [this] { m_sheet->takeFocus(); });
    connect(m_sheet, &PremisesSheet::changed, this, [this](reg::PremisesId id) {
        fillList();
        m_list->setCurrentKey(qstring(id.text()));
    });
    connect(m_sheet, &PremisesSheet::gone, this, [this] {
        refresh();
        m_list->setFocus(Qt::OtherFocusReason);
    });
    shell::orderTabs(this);
}

void PremisesPlace::addFileButtons(std::vector<QWidget*>& left, QWidget* browse) {
    auto* import =
        new shell::KeyButton(tr("Take over a spreadsheet"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I),
                             shell::ButtonKind::Quiet, browse);
    import->setObjectName(QStringLiteral("importButton"));
    import->setEnabled(!m_context.store.isReadOnly());
    connect(import, &QPushButton::clicked, this, [this] { startImport(); });
    using exchange::ListKind;
    auto* write =
        shell::exportButton({ListKind::Premises, ListKind::People, ListKind::Appliances}, m_context, browse);
    left.push_back(import);
    left.push_back(write);
}

void PremisesPlace::startImport(const QString& path) {
    if (m_context.store.isReadOnly()) {
        return;
    }
    commit();
    if (m_import == nullptr) {
        m_import = new ImportAssistant(m_context, this);
        m_views->addWidget(m_import);
        connect(m_import, &ImportAssistant::closed, this, &PremisesPlace::endImport);
    }
    m_views->setCurrentWidget(m_import);
    if (path.isEmpty()) {
        m_import->start();
    } else {
        m_import->startWith(path);
    }
}

void PremisesPlace::endImport() {
    m_views->setCurrentIndex(0);
    refresh();
    m_list->setFocus(Qt::OtherFocusReason);
}

void PremisesPlace::refresh() {
    if (m_list == nullptr) {
        build();
    }
    fillList();
    if (m_sheet->isNew()) {
        return;  // what is being written stays
    }
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    show(m_list->currentRow());
}

void PremisesPlace::fillList() {
    m_list->setEmptyText(m_search.isEmpty() ? tr("No premises yet. Ctrl+Shift+N adds the first.")
                                            : tr("Nothing found for “%1”.").arg(m_search));
    if (m_search.isEmpty()) {
        sayMore(false);
        m_list->setSource(std::make_unique<AllPremises>(m_context));
        return;
    }
    const auto found = m_context.store.premises(m_search.toStdString(), kShown);
    std::vector<shell::Line> lines;
    if (!found) {
        m_list->setEmptyText(m_context.words.error(found.error()));
        m_list->setLines({});
        return;
    }
    for (const auto& premises : *found) {
        lines.push_back(lineOf(premises, m_context.words));
    }
    sayMore(static_cast<int>(lines.size()) == kShown);
    m_list->setLines(std::move(lines));
}

/// What was said of an earlier word is not true of the next.
void PremisesPlace::sayMore(bool isMore) {
    if (isMore || m_saysMore) {
        m_context.navigator.say(
            isMore ? tr("%1 are shown, and there are more: type another word.").arg(kShown) : QString());
    }
    m_saysMore = isMore;
}

void PremisesPlace::show(int row) {
    const auto id = row < 0 ? std::nullopt : uuidFromText(m_list->line(row).key.toStdString());
    if (!id) {
        m_sheet->showNothing();
        return;
    }
    m_sheet->show({*id});
}

void PremisesPlace::commit() {
    shell::commitField(this);
}

void PremisesPlace::takeFocus() {
    if (m_import != nullptr && m_views->currentWidget() == m_import) {
        m_import->takeFocus();
        return;
    }
    if (m_sheet->isNew()) {
        m_sheet->takeFocus();
    } else {
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void PremisesPlace::takeFound() {
    m_list->setFocus(Qt::OtherFocusReason);
}

rulebook::Gas PremisesPlace::gas() const {
    return m_sheet == nullptr ? rulebook::Gas::NaturalGas : m_sheet->gas();
}

std::optional<reg::Country> PremisesPlace::country() const {
    return m_sheet == nullptr ? std::nullopt : std::optional(m_sheet->country());
}

void PremisesPlace::search(const QString& text) {
    m_search = text;
    fillList();
    if (m_list->currentRow() < 0 && m_list->count() > 0) {
        m_list->setCurrentRow(0);
    }
    show(m_list->currentRow());
}

void PremisesPlace::openPremises(reg::PremisesId id) {
    m_views->setCurrentIndex(0);
    m_search.clear();
    fillList();
    m_list->setCurrentKey(qstring(id.text()));
    m_sheet->show(id);
    m_sheet->takeFocus();
}

void PremisesPlace::startNew() {
    if (m_context.store.isReadOnly()) {
        return;
    }
    commit();
    if (!m_sheet->isNew()) {
        m_beforeNew = m_list->currentKey();
    }
    m_sheet->startNew();
    m_list->setCurrentRow(-1);
    m_sheet->takeFocus();
}

void PremisesPlace::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        commit();
        if (m_sheet->isNew()) {
            m_list->setCurrentKey(m_beforeNew);
            show(m_list->currentRow());
        }
        m_list->setFocus(Qt::OtherFocusReason);
        return;
    }
    Place::keyPressEvent(event);
}

}  // namespace hearth::ui::premises
