// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/waiting.h"

#include <QApplication>
#include <QMutex>
#include <QThread>
#include <QTimer>
#include <QWaitCondition>
#include <QWidget>

#include <functional>
#include <gtest/gtest.h>

namespace {

using hearth::app::doWaiting;

QWidget* shownNotice() {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
        if (widget->objectName() == QStringLiteral("waitingNotice") && widget->isVisible()) {
            return widget;
        }
    }
    return nullptr;
}

/// Something that goes on until it is let go.
class Work {
  public:
    void operator()() {
        QMutexLocker lock(&m_mutex);
        while (!m_mayEnd) {
            m_changed.wait(&m_mutex);
        }
        m_isDone = true;
    }
    void letEnd() {
        QMutexLocker lock(&m_mutex);
        m_mayEnd = true;
        m_changed.wakeAll();
    }
    [[nodiscard]] bool isDone() {
        QMutexLocker lock(&m_mutex);
        return m_isDone;
    }

  private:
    QMutex m_mutex;
    QWaitCondition m_changed;
    bool m_mayEnd = false;
    bool m_isDone = false;
};

/// Looks for the notice every few milliseconds until `seen` says that it has seen enough.
void watch(QTimer& timer, const std::function<bool(QWidget*)>& seen) {
    QObject::connect(&timer, &QTimer::timeout, &timer, [&timer, seen] {
        if (seen(shownNotice())) {
            timer.stop();
        }
    });
    timer.start(5);
}

TEST(WaitingTest, showsANoticeOnceItTakesLongAndReturnsWhenTheWorkIsDone) {
    Work work;
    QTimer timer;
    bool wasShown = false;
    watch(timer, [&](const QWidget* notice) {
        wasShown = notice != nullptr;
        if (wasShown) {
            work.letEnd();
        }
        return wasShown;
    });
    doWaiting([&] { work(); }, QStringLiteral("It is being done."));
    EXPECT_TRUE(wasShown);
    EXPECT_TRUE(work.isDone());
    EXPECT_EQ(shownNotice(), nullptr);
}

TEST(WaitingTest, aNoticeThatIsClosedEndsNothing) {
    Work work;
    QTimer timer;
    watch(timer, [&](QWidget* notice) {
        if (notice == nullptr) {
            return false;
        }
        notice->close();
        QCoreApplication::quit();
        work.letEnd();
        return true;
    });
    doWaiting([&] { work(); }, QStringLiteral("It is being done."));
    EXPECT_TRUE(work.isDone());
}

}  // namespace
