// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/pipe_table.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/visit/tube_menu.h"
#include "ui/visit/volume_text.h"

#include <QFontMetrics>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QToolButton>

#include <algorithm>
#include <array>
#include <optional>

namespace hearth::ui::visit {

using reg::PipeSection;

namespace {

// A section takes two lines and a gap of the grid: fittings, what hangs at the end and the volume stand below
// the rest, since beside it nothing could be read in a narrow window.
constexpr int kLines = 3;  // the last of them is a gap
constexpr int kVolumeWidth = 84;

}  // namespace

/// Where a column of a row stands in the grid.
struct PipeTable::Place {
    int row;
    int column;
    int columns;
};

PipeTable::Place PipeTable::placeOf(int line, int column) {
    switch (column) {
        case Fittings:
            return {kLines * line + 1, Tube, LeadsTo - Tube};
        case End:
            return {kLines * line + 1, LeadsTo, UnderTest - LeadsTo};
        case ColumnCount:
            return {kLines * line, kVolumeColumn, 1};
        default:
            return {kLines * line, column, 1};
    }
}

/// One row: its editors by column, the volume that follows, and the button that removes it.
struct PipeTable::Row {
    std::array<SheetField*, ColumnCount> fields{};
    shell::Text* volume = nullptr;
    QToolButton* removeButton = nullptr;
    std::optional<bool> isVolumeBelow;

    void destroy() {
        for (SheetField* field : fields) {
            field->editor()->hide();
            field->editor()->deleteLater();
        }
        volume->deleteLater();
        removeButton->deleteLater();
    }
};

PipeTable::PipeTable(const SheetContext& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_grid(new QGridLayout(this)),
      m_isReadOnly(context.model.isReadOnly()) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(look::kGap);
    m_grid->setVerticalSpacing(look::kGap / 2);
    addHeads();
    fitRows();
}

PipeTable::~PipeTable() = default;

void PipeTable::addHeads() {
    const QStringList heads{tr("tube"),     tr("length"),       tr("volume by hand"),
                            tr("leads to"), tr("goes on from"), tr("under test"),
                            tr("fittings"), tr("at its end"),   tr("volume")};
    int column = 0;
    for (const QString& text : heads) {
        auto* head = new shell::Text(text, look::TypeRole::Label, look::Role::SoftInk, this);
        head->setWordWrap(true);
        const Place place = placeOf(0, column);
        m_grid->addWidget(head, place.row, place.column, 1, place.columns, Qt::AlignBottom);
        head->setAlignment(column == ColumnCount ? Qt::AlignRight : Qt::AlignLeft);
        m_heads.push_back(head);
        ++column;
    }
}

/// A tube and a length are read whole at any width of the window; the others give way.
void PipeTable::giveRoom(input::Editor* editor, Column column) {
    const char* needs = column == Tube     ? "Copper 22 mm"
                        : column == Length ? "22.25"
                        : column == After  ? "meter"
                        : column == End    ? "not said yet"
                                           : nullptr;
    if (needs == nullptr) {
        return;
    }
    QWidget* target = editor->focusTarget();
    const auto* line = qobject_cast<QLineEdit*>(target);
    const QFontMetrics metrics(look::font(look::TypeRole::Body));
    constexpr int kFrame = 2 * (7 + 1) + 4;  // the style's padding and edge, and the line's own
    constexpr int kArrow = 22;               // a list's
    const int beside = line == nullptr ? kArrow : line->textMargins().right();  // a length's unit
    target->setMinimumWidth(metrics.horizontalAdvance(QLatin1String(needs)) + kFrame + beside);
}

void PipeTable::addEditor(Row& row, Column column, input::Editor* editor, FieldBinding binding,
                          const QString& name) {
    const int line = static_cast<int>(m_rows.size()) + 1;
    editor->setLabel({}, tr("Pipe %1, %2").arg(line).arg(name));
    editor->focusTarget()->installEventFilter(this);
    giveRoom(editor, column);
    const Place place = placeOf(line, column);
    m_grid->addWidget(editor, place.row, place.column, 1, place.columns, Qt::AlignTop);
    FieldKey key;
    if (line == 1 && column == Tube) {
        key.field = record::Field::PipeOrVolume;
    }
    row.fields[static_cast<std::size_t>(column)] =
        new SheetField(editor, key, std::move(binding), m_context.window.words);
}

void PipeTable::addRow() {
    const std::size_t index = m_rows.size();
    const int line = static_cast<int>(index) + 1;
    const auto& words = m_context.window.words;
    auto row = std::make_unique<Row>();
    addEditor(*row, Tube, input::makeTextEditor(this), tubeBinding(index), tr("tube"));
    addEditor(*row, Length, input::makeQuantityEditor(this, quantity::UnitFamily::Length),
              figureBinding(index, &PipeSection::length), tr("length"));
    addEditor(*row, TypedVolume, input::makeQuantityEditor(this, quantity::UnitFamily::Volume),
              figureBinding(index, &PipeSection::volume), tr("volume by hand"));
    addEditor(*row, LeadsTo, input::makeTextEditor(this), leadsToBinding(index), tr("leads to"));
    addEditor(*row, After, input::makeTextEditor(this), afterBinding(index), tr("goes on from"));
    const std::string yes(reg::choice::kYes);
    const std::string no(reg::choice::kNo);
    const auto item = reg::Item::TestSmell;  // any yes and no
    addEditor(*row, UnderTest,
              input::makeChoiceEditor(this, {{QString::fromStdString(yes), words.choice(item, yes)},
                                             {QString::fromStdString(no), words.choice(item, no)}}),
              underTestBinding(index), tr("under test"));
    addEditor(*row, Fittings, input::makeTextEditor(this), fittingsBinding(index), tr("fittings"));
    addEditor(*row, End, input::makeListEditor(this, m_ends), endBinding(index), tr("at its end"));
    row->volume = new shell::Text({}, look::TypeRole::Small, look::Role::SoftInk, this);
    row->volume->setAlignment(Qt::AlignRight | Qt::AlignTop);
    row->volume->setWordWrap(true);
    row->removeButton = new QToolButton(this);
    row->removeButton->setText(QStringLiteral("\u00D7"));
    row->removeButton->setToolTip(tr("Remove this section (Ctrl+Delete)"));
    row->removeButton->setAccessibleName(tr("Remove pipe %1").arg(line));
    row->removeButton->setFocusPolicy(Qt::NoFocus);
    connect(row->removeButton, &QToolButton::clicked, this, [this, index] { remove(index); });
    for (SheetField* field : row->fields) {
        field->editor()->setReadOnly(m_isReadOnly);
        field->refill();
    }
    m_rows.push_back(std::move(row));
}

void PipeTable::dropRows(std::size_t keep) {
    while (m_rows.size() > keep) {
        m_rows.back()->destroy();
        m_rows.pop_back();
    }
}

/// As many rows as sections, and an empty one after them for as long as something may be typed.
void PipeTable::fitRows() {
    const std::size_t wanted = m_context.model.file().pipes.size() + (m_isReadOnly ? 0 : 1);
    const auto ends = endChoices();
    const auto same = [](const input::ChoiceItem& a, const input::ChoiceItem& b) {
        return a.code == b.code && a.label == b.label;
    };
    if (!std::equal(ends.begin(), ends.end(), m_ends.begin(), m_ends.end(), same)) {
        m_ends = ends;  // another appliance: the rows offer it too
        dropRows(0);
    }
    if (m_rows.size() == wanted) {
        return;
    }
    dropRows(wanted);
    while (m_rows.size() < wanted) {
        addRow();
    }
    showColumns();
    Q_EMIT rowsChanged();
}

void PipeTable::refill() {
    fitRows();
    for (const auto& row : m_rows) {
        for (SheetField* field : row->fields) {
            field->refill();
        }
    }
}

void PipeTable::setReadOnly(bool readOnly) {
    m_isReadOnly = readOnly;
    fitRows();
    for (const auto& row : m_rows) {
        for (SheetField* field : row->fields) {
            field->editor()->setReadOnly(readOnly);
        }
    }
}

void PipeTable::refresh() {
    fitRows();
    const auto& words = m_context.window.words;
    const auto& sections = m_context.model.volume().sections;
    for (std::size_t index = 0; index < m_rows.size(); ++index) {
        const bool known = index < sections.size() && sections[index].volume;
        m_rows[index]->volume->setText(known ? volumeText(*sections[index].volume, words) + u'\n' +
                                                   words.volumeBasis(sections[index].basis)
                                             : QString());
        m_rows[index]->removeButton->setVisible(index < m_context.model.file().pipes.size() && !m_isReadOnly);
    }
    showColumns();
}

/// What follows a section stands at the end of its first line, or below where that line or another is filled.
void PipeTable::placeVolumes(bool below) {
    m_grid->setColumnMinimumWidth(kVolumeColumn, below ? 0 : kVolumeWidth);
    m_grid->removeWidget(m_heads.back());
    m_grid->addWidget(m_heads.back(), below ? 1 : 0, below ? UnderTest : kVolumeColumn, 1, below ? 2 : 1,
                      Qt::AlignBottom);
    for (std::size_t index = 0; index < m_rows.size(); ++index) {
        Row& row = *m_rows[index];
        if (row.isVolumeBelow == below) {
            continue;
        }
        row.isVolumeBelow = below;
        const int first = kLines * (static_cast<int>(index) + 1);
        m_grid->removeWidget(row.volume);
        m_grid->removeWidget(row.removeButton);
        if (below) {
            m_grid->addWidget(row.volume, first + 1, UnderTest, kLines - 1, 2, Qt::AlignTop);
        } else {
            m_grid->addWidget(row.volume, first, kVolumeColumn, kLines, 1, Qt::AlignTop);
        }
        m_grid->addWidget(row.removeButton, first, kVolumeColumn + (below ? 0 : 1),
                          Qt::AlignRight | Qt::AlignTop);
    }
}

void PipeTable::showColumns() {
    const auto& file = m_context.model.file();
    const auto any = [&](auto&& has) { return std::any_of(file.pipes.begin(), file.pipes.end(), has); };
    const bool part = std::any_of(file.tests.begin(), file.tests.end(), [&](const reg::Test& test) {
        return file.choiceOf(reg::subject(test.id), reg::Item::TestExtent) == reg::choice::kPart;
    });
    const bool underTest = part || any([](const PipeSection& pipe) { return !pipe.underTest; });
    const bool byHand = any([](const PipeSection& pipe) {
        const pipework::Tube* tube = pipework::tubeByCode(pipe.tubeCode);
        return !pipe.volume.text.empty() ||
               (tube != nullptr && tube->family == pipework::TubeFamily::Corrugated);
    });
    const bool tree = !file.pipes.empty();
    const bool ends = asksForEnds();
    const std::array shown{true, true, byHand, true, tree, underTest, ends, ends};
    constexpr int kLarge = 120;  // letters with which all of it is too wide for one line of a small window
    placeVolumes(ends || underTest || look::textPercentInUse() > kLarge);
    constexpr std::array kStretch{6, 3, 5, 6, 3, 5};  // those on the second line follow
    for (std::size_t column = 0; column < shown.size(); ++column) {
        if (column < kStretch.size()) {
            m_grid->setColumnStretch(static_cast<int>(column), shown[column] ? kStretch[column] : 0);
        }
        m_heads[column]->setVisible(shown[column]);
        for (std::size_t row = 0; row < m_rows.size(); ++row) {
            const bool second = column >= kStretch.size();  // nothing of a section that is not there yet
            m_rows[row]->fields[column]->editor()->setVisible(shown[column] &&
                                                              (!second || row < file.pipes.size()));
        }
    }
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        m_grid->setRowMinimumHeight(kLines * (static_cast<int>(row) + 2) - 1, ends ? look::kGap / 2 : 0);
    }
}

Result<void> PipeTable::change(std::size_t row, const std::function<void(PipeSection&)>& how) {
    auto pipes = m_context.model.file().pipes;
    if (row >= pipes.size()) {
        PipeSection pipe;
        pipe.id = reg::PipeSectionId{m_context.model.store().newId()};
        pipe.installation = m_context.model.file().installation.id;
        pipe.position = static_cast<int>(pipes.size());
        if (!pipes.empty()) {
            pipe.after = pipes.back().id;
        }
        pipes.push_back(pipe);
        row = pipes.size() - 1;
    }
    how(pipes[row]);
    const bool isNew = pipes.size() > m_context.model.file().pipes.size();
    auto saved = m_context.model.save(pipes);
    if (saved && isNew) {
        refillAt(row, After);  // from the section before, unless somebody says otherwise
    }
    return saved;
}

void PipeTable::refillAt(std::size_t row, Column column) {
    m_rows[row]->fields[column]->refill();
}

input::Editor* PipeTable::editorAt(std::size_t row, int column) const {
    return m_rows[row]->fields[static_cast<std::size_t>(column)]->editor();
}

input::Editor* PipeTable::firstTube() const {
    return m_rows.empty() ? nullptr : editorAt(0, Tube);
}

input::Editor* PipeTable::firstOutOfOrder() const {
    const auto& pipes = m_context.model.file().pipes;
    const auto at = std::find_if(pipes.begin(), pipes.end(),
                                 [](const PipeSection& pipe) { return !pipe.afterText.empty(); });
    const auto row = static_cast<std::size_t>(at - pipes.begin());
    return row < m_rows.size() ? editorAt(row, After) : nullptr;
}

std::size_t PipeTable::rowOf(const QObject* focusTarget) const {
    const auto at = std::find_if(m_rows.begin(), m_rows.end(), [&](const auto& row) {
        return std::any_of(row->fields.begin(), row->fields.end(),
                           [&](SheetField* field) { return field->editor()->focusTarget() == focusTarget; });
    });
    return static_cast<std::size_t>(at - m_rows.begin());
}

void PipeTable::remove(std::size_t row) {
    const auto& pipes = m_context.model.file().pipes;
    if (row >= pipes.size() || m_isReadOnly) {
        return;
    }
    if (const auto saved = m_context.model.save(without(pipes, row)); !saved) {
        m_rows[row]->fields[Tube]->editor()->setProblem(m_context.window.words.error(saved.error()));
        return;
    }
    refill();
    if (row < m_rows.size()) {
        shell::focusOn(editorAt(row, Tube));
    }
}

void PipeTable::offerTubes(std::size_t row) {
    input::Editor* editor = editorAt(row, Tube);
    auto* menu = new TubeMenu(m_context.window.words, this);
    connect(menu, &TubeMenu::chosen, this, [this, row](const QString& code) {
        if (row < m_rows.size() && !m_isReadOnly) {
            Q_EMIT editorAt(row, Tube)->committed(code);
        }
    });
    menu->popup(editor->mapToGlobal(QPoint(0, editor->height())));
}

bool PipeTable::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const std::size_t row = rowOf(watched);
    if (row >= m_rows.size()) {
        return QWidget::eventFilter(watched, event);
    }
    const bool isTube = editorAt(row, Tube)->focusTarget() == watched;
    const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (isTube && isEnter && row + 1 == m_rows.size() && editorAt(row, Tube)->text().isEmpty()) {
        Q_EMIT left();  // Enter in the empty row: no more sections
        return true;
    }
    if (key->key() == Qt::Key_Delete && key->modifiers() == Qt::ControlModifier) {
        remove(row);
        return true;
    }
    if (isTube && key->key() == Qt::Key_Down && key->modifiers() == Qt::AltModifier && !m_isReadOnly) {
        offerTubes(row);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace hearth::ui::visit
