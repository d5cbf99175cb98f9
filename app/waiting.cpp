// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/waiting.h"

#include "ui/shell/kit.h"

#include <QEventLoop>
#include <QThread>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>

namespace hearth::app {
namespace {

constexpr std::chrono::milliseconds kNobodyWonders{700};
constexpr int kNoticeWidth = 420;

}  // namespace

std::unique_ptr<QWidget> makeWaitingNotice(const QString& sentence) {
    auto notice = std::make_unique<QWidget>();
    notice->setObjectName(QStringLiteral("waitingNotice"));
    notice->setWindowTitle(QStringLiteral("Hearthledger"));
    notice->setMinimumWidth(kNoticeWidth);
    auto* lines = new QVBoxLayout(notice.get());
    lines->addWidget(ui::shell::bodyText(sentence, notice.get()));
    QTimer::singleShot(kNobodyWonders, notice.get(), &QWidget::show);
    return notice;
}

void doWaiting(const std::function<void()>& work, const QString& sentence) {
    const std::unique_ptr<QThread> thread(QThread::create(work));
    QEventLoop loop;
    QObject::connect(thread.get(), &QThread::finished, &loop, &QEventLoop::quit);
    const auto notice = makeWaitingNotice(sentence);
    thread->start();
    loop.exec();
    thread->wait();  // closing the last window ends the loop early
}

}  // namespace hearth::app
