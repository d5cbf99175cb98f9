// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/import_assistant.h"

#include "ui/shell/backup_runner.h"
#include "ui/shell/importing.h"
#include "ui/shell/progress.h"

#include <QDragEnterEvent>
#include <QFile>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMimeData>
#include <QSaveFile>
#include <QUrl>

namespace hearth::ui::premises {
namespace {

using exchange::RowFate;

/// The rows that were not taken, with their headings, as a file to put right and take over later.
std::string restOf(const ImportWork& work) {
    const auto lineOf = [](const exchange::CsvRow& row) {
        std::vector<exchange::CsvCell> cells;
        for (const auto& cell : row.cells) {
            cells.push_back({cell});
        }
        return exchange::csvLine(cells);
    };
    std::string text(exchange::kUtf8Mark);
    text += lineOf(work.table.rows[work.choices.columns.headerRow]);
    for (const auto& planned : work.plan.rows) {
        if (planned.fate != RowFate::SetAside && planned.fate != RowFate::Refused) {
            continue;
        }
        for (const auto& row : work.table.rows) {
            text += row.line == planned.line ? lineOf(row) : std::string();
        }
    }
    return text;
}

std::optional<QString> fileIn(const QMimeData* data) {
    if (data == nullptr || data->urls().size() != 1 || !data->urls().first().isLocalFile()) {
        return std::nullopt;
    }
    return data->urls().first().toLocalFile();
}

}  // namespace

ImportAssistant::ImportAssistant(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_sheet(new shell::Sheet(this)) {
    setObjectName(QStringLiteral("importAssistant"));
    setAcceptDrops(true);
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_sheet);
}

void ImportAssistant::start() {
    m_work = {};
    go(Step::File);
    takeFocus();
}

void ImportAssistant::startWith(const QString& path) {
    m_work = {};
    m_work.path = path;
    read();
}

void ImportAssistant::commit() {
    shell::commitField(this);
}

void ImportAssistant::takeFocus() {
    if (m_columns != nullptr) {
        m_columns->takeFocus();
    } else if (m_planned != nullptr) {
        m_planned->takeFocus();
    } else if (auto* button =
                   findChild<QPushButton*>(m_step == Step::File ? QStringLiteral("importChooseFile")
                                                                : QStringLiteral("importClose"))) {
        button->setFocus(Qt::OtherFocusReason);
    }
}

void ImportAssistant::go(Step step) {
    commit();
    m_step = step;
    m_columns = nullptr;
    m_planned = nullptr;
    delete m_page;
    m_page = page(step);
    m_sheet->lines()->addWidget(m_page, 1);
    m_page->show();
    shell::orderTabs(this);
    takeFocus();
}

QWidget* ImportAssistant::page(Step step) {
    auto* page = new QWidget(m_sheet);
    auto* lines = new QVBoxLayout(page);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::titleText(tr("Take over a spreadsheet"), page));
    const QStringList steps{tr("the file"), tr("its columns"), tr("what would happen"), tr("done")};
    const int number = static_cast<int>(step);
    lines->addWidget(shell::softText(
        tr("Step %1 of %2: %3")
                .arg(QString::number(number + 1), QString::number(steps.size()), steps[number]) +
            (m_work.name.isEmpty() ? QString() : QStringLiteral(" · ") + m_work.name),
        page));
    switch (step) {
        case Step::File:
            lines->addWidget(filePage());
            break;
        case Step::Columns:
            m_columns = new ImportColumnsPart(m_context, m_work, page);
            connect(m_columns, &ImportColumnsPart::formChanged, this, &ImportAssistant::readAgain,
                    Qt::QueuedConnection);
            lines->addWidget(m_columns);
            break;
        case Step::Plan:
            m_planned = new ImportPlanPart(m_context, m_work, page);
            m_planned->refresh();
            connect(m_planned, &ImportPlanPart::chosen, this, [this] {
                if (plan()) {
                    m_planned->refresh();
                }
            });
            lines->addWidget(m_planned, 1);  // its list takes the height that there is
            break;
        case Step::Done:
            lines->addWidget(donePage());
            break;
    }
    addButtons(step, lines);
    if (step != Step::Plan) {
        lines->addStretch(1);
    }
    return page;
}

QWidget* ImportAssistant::filePage() {
    auto* part = new QWidget(m_sheet);
    auto* lines = new QVBoxLayout(part);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::bodyText(
        tr("Save your spreadsheet as CSV, with one row for each premises or for each appliance and a row of "
           "headings "
           "above them. Premises, people, meters, appliances and the date of the last check are taken over."),
        part));
    lines->addWidget(
        shell::bodyText(tr("Nothing is written before you have seen what would happen, and one undo takes "
                           "all of it back. What is in the store already is never written over."),
                        part));
    auto* choose = new shell::KeyButton(tr("Choose a file"), shell::ButtonKind::Primary, part);
    choose->setObjectName(QStringLiteral("importChooseFile"));
    auto* row = new QHBoxLayout;
    row->addWidget(choose);
    row->addWidget(shell::softText(tr("or drop it here"), part), 1);
    lines->addLayout(row);
    connect(choose, &QPushButton::clicked, this, &ImportAssistant::chooseFile);
    return part;
}

QWidget* ImportAssistant::donePage() {
    auto* part = new QWidget(m_sheet);
    auto* lines = new QVBoxLayout(part);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    auto* said = shell::bodyText(m_undone ? tr("All of it was taken back: the store is as it was before.")
                                          : tr("Taken over: %1").arg(shell::planSummary(m_work.plan)),
                                 part);
    said->setObjectName(QStringLiteral("importDone"));
    said->setFont(shell::strongFont());
    lines->addWidget(said);
    const int rest = m_work.plan.count(RowFate::SetAside) + m_work.plan.count(RowFate::Refused);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    if (!m_undone) {
        auto* back = new shell::KeyButton(tr("Take all of it back"), shell::ButtonKind::Plain, part);
        back->setObjectName(QStringLiteral("importUndo"));
        row->addWidget(back);
        connect(back, &QPushButton::clicked, this, &ImportAssistant::undo);
    }
    if (!m_undone && rest > 0) {
        lines->addWidget(
            shell::bodyText(tr("%n row(s) were not taken. They can be written to a file of their own, put "
                               "right there and taken over later.",
                               nullptr, rest),
                            part));
        auto* write = new shell::KeyButton(tr("Write those rows to a file"), shell::ButtonKind::Plain, part);
        write->setObjectName(QStringLiteral("importWriteRest"));
        row->addWidget(write);
        connect(write, &QPushButton::clicked, this, &ImportAssistant::writeRest);
    }
    row->addStretch(1);
    lines->addLayout(row);
    return part;
}

void ImportAssistant::addButtons(Step step, QVBoxLayout* lines) {
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    auto* close = new shell::KeyButton(
        step == Step::Done ? tr("To the premises") : tr("Leave it"),
        step == Step::Done ? shell::ButtonKind::Primary : shell::ButtonKind::Quiet, m_sheet);
    close->setObjectName(QStringLiteral("importClose"));
    close->showKey(QStringLiteral("Esc"));
    connect(close, &QPushButton::clicked, this, &ImportAssistant::closed);
    if (step == Step::Columns || step == Step::Plan) {
        auto* back = new shell::KeyButton(tr("Back"), QKeySequence(Qt::ALT | Qt::Key_Left),
                                          shell::ButtonKind::Plain, m_sheet);
        back->setObjectName(QStringLiteral("importBack"));
        connect(
            back, &QPushButton::clicked, this,
            [this, step] { go(step == Step::Columns ? Step::File : Step::Columns); }, Qt::QueuedConnection);
        auto* next =
            new shell::KeyButton(step == Step::Columns ? tr("See what would happen") : tr("Take over"),
                                 QKeySequence(Qt::ALT | Qt::Key_Right), shell::ButtonKind::Primary, m_sheet);
        next->setObjectName(QStringLiteral("importNext"));
        connect(next, &QPushButton::clicked, this,
                step == Step::Columns ? &ImportAssistant::planColumns : &ImportAssistant::takeOver,
                Qt::QueuedConnection);
        row->addWidget(back);
        row->addWidget(next);
    }
    row->addStretch(1);
    row->addWidget(close);
    lines->addLayout(row);
}

void ImportAssistant::chooseFile() {
    const QStringList files = m_context.dialogs.openFiles(
        this, tr("Choose a spreadsheet"), tr("Spreadsheets (*.csv *.txt *.tsv);;All files (*)"));
    if (!files.isEmpty()) {
        startWith(files.first());
    }
}

void ImportAssistant::read() {
    QFile file(m_work.path);
    if (!file.open(QIODevice::ReadOnly)) {
        m_context.dialogs.tell(
            this, tr("The file was not read"),
            m_context.words.error(
                {ErrorCode::FileUnreadable, {m_work.path.toStdString(), file.errorString().toStdString()}}));
        go(Step::File);
        return;
    }
    m_work.bytes = file.readAll().toStdString();
    m_work.name = QFileInfo(m_work.path).fileName();
    readAgain();
}

void ImportAssistant::readAgain() {
    m_work.table = exchange::readCsv(m_work.bytes, m_work.form);
    const auto choices = shell::firstChoices(m_work.table, m_context.store, m_context.clock, m_work.name);
    if (!choices || m_work.table.rows.empty()) {
        m_context.dialogs.tell(this, tr("The file was not read"),
                               choices ? tr("There is nothing in %1.").arg(m_work.name)
                                       : m_context.words.error(choices.error()));
        m_work.name.clear();
        go(Step::File);
        return;
    }
    m_work.choices = *choices;
    go(Step::Columns);
}

void ImportAssistant::planColumns() {
    commit();
    if (plan()) {
        go(Step::Plan);
    }
}

bool ImportAssistant::plan() {
    auto planned = shell::planFor(m_work.table, m_work.choices, m_context.store, m_context.clock);
    if (!planned) {
        m_context.dialogs.tell(this, tr("The store was not read"), m_context.words.error(planned.error()));
        return false;
    }
    m_work.plan = std::move(*planned);
    return true;
}

void ImportAssistant::takeOver() {
    if (m_work.plan.blocked || m_work.plan.writes() == 0) {
        m_context.dialogs.tell(this, tr("Nothing to take over"),
                               tr("No row of the file can be taken as it is. Nothing was written."));
        return;
    }
    const auto taken = [this] {
        shell::Progress progress(this, "importProgress", tr("Taking over %1").arg(m_work.name),
                                 tr("Stop, and keep nothing"));
        constexpr int kStep = 20;  // asking at each write would cost more than the write
        return shell::takeOver(m_work.plan, m_context.store,
                               [&](int done, int all) { return done % kStep != 0 || progress(done, all); });
    }();
    if (!taken) {
        m_context.dialogs.tell(this, tr("Nothing was taken over"), m_context.words.error(taken.error()));
        return;
    }
    m_undone = false;
    go(Step::Done);
    if (m_context.backups != nullptr) {  // much at once is worth a backup of its own
        m_context.backups->startIfDue(store::BackupOccasion::AfterMuch);
    }
    m_context.navigator.say(tr("Taken over: %1").arg(shell::planSummary(m_work.plan)));
}

void ImportAssistant::undo() {
    const auto undone = m_context.store.undo();
    if (!undone) {
        m_context.dialogs.tell(this, tr("It was not taken back"), m_context.words.error(undone.error()));
        return;
    }
    m_undone = true;
    go(Step::Done);
    m_context.navigator.say(tr("All of it was taken back."));
}

void ImportAssistant::writeRest() {
    const auto path =
        m_context.dialogs.saveFile(this, tr("Write the rows that were not taken"),
                                   tr("not taken - %1").arg(m_work.name), tr("Spreadsheets (*.csv)"));
    if (!path) {
        return;
    }
    const std::string text = restOf(m_work);
    QSaveFile file(*path);
    const auto size = static_cast<qint64>(text.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size || !file.commit()) {
        m_context.dialogs.tell(
            this, tr("The file was not written"),
            m_context.words.error(
                {ErrorCode::FileUnwritable, {path->toStdString(), file.errorString().toStdString()}}));
        return;
    }
    m_context.navigator.say(tr("Written to %1.").arg(*path));
}

void ImportAssistant::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
        return;
    }
    QWidget::keyPressEvent(event);
}

void ImportAssistant::dragEnterEvent(QDragEnterEvent* event) {
    if (m_step == Step::File && fileIn(event->mimeData())) {
        event->acceptProposedAction();
    }
}

void ImportAssistant::dropEvent(QDropEvent* event) {
    if (const auto path = fileIn(event->mimeData())) {
        event->acceptProposedAction();
        startWith(*path);
    }
}

}  // namespace hearth::ui::premises
