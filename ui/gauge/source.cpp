// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/source.h"

#include <QIODevice>

#include <string_view>

namespace hearth::ui::gauge {

namespace {

/// Read and taken apart in a few milliseconds. A device that has more waits, and holds its sender back.
constexpr qint64 kSlice = 8192;
constexpr qint64 kMostUnsent = 1024;

}  // namespace

Source::Source(exchange::LineMatcher matcher, const Clock& clock)
    : m_matcher(std::move(matcher)), m_clock(clock) {
    m_again.setSingleShot(true);
    m_again.setInterval(kTryAgain);
    connect(&m_again, &QTimer::timeout, this, [this] { open(); });
    m_more.setSingleShot(true);
    m_more.setInterval(0);
    connect(&m_more, &QTimer::timeout, this, &Source::readSome);
    m_asking.setTimerType(Qt::PreciseTimer);
    connect(&m_asking, &QTimer::timeout, this, &Source::ask);
}

void Source::setAsking(const QByteArray& line, std::chrono::milliseconds every) {
    m_ask = line;
    m_asking.setInterval(every);
}

void Source::ask() {
    QIODevice* to = device();
    // Whoever does not read is not sent more than it can be asked at once.
    if (to != nullptr && m_state == SourceState::Live && to->bytesToWrite() < kMostUnsent) {
        to->write(m_ask);
    }
}

void Source::start() {
    if (m_state != SourceState::Stopped) {
        return;
    }
    m_wasLive = false;
    m_fault = SourceFault::None;
    setState(SourceState::Opening);
    open();
}

void Source::stop() {
    if (m_state == SourceState::Stopped) {
        return;
    }
    m_again.stop();
    m_more.stop();
    m_asking.stop();
    setState(SourceState::Stopped);
    close();
}

void Source::opened() {
    m_splitter.begin();
    if (beginsWithALine()) {
        m_splitter.feed("\n", [](std::string_view) {});
    }
    m_fault = SourceFault::None;
    setState(SourceState::Live);
    if (isAsking()) {
        ask();
        m_asking.start();
    }
    if (m_wasLive) {
        Q_EMIT resumed();
    }
    m_wasLive = true;
}

void Source::failed(SourceFault fault) {
    if (m_state == SourceState::Stopped) {
        return;
    }
    const bool isLoss = m_state == SourceState::Live;
    m_fault = fault;
    m_more.stop();
    m_asking.stop();
    setState(m_wasLive ? SourceState::Lost : SourceState::Opening);
    close();
    m_again.start();
    if (isLoss) {
        Q_EMIT lost();
    } else {
        Q_EMIT stateChanged();  // another reason, perhaps
    }
}

void Source::setState(SourceState state) {
    if (m_state != state) {
        m_state = state;
        Q_EMIT stateChanged();
    }
}

void Source::readSome() {
    QIODevice* from = device();
    if (from == nullptr || m_state != SourceState::Live) {
        return;
    }
    take(from->read(kSlice));
    // Looked for again, since whoever heard of a line may have stopped it.
    from = device();
    if (from != nullptr && m_state == SourceState::Live && from->bytesAvailable() > 0) {
        m_more.start();
    }
}

void Source::take(const QByteArray& bytes) {
    const auto at = m_clock.elapsed();
    m_splitter.feed(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())),
                    [this, at](std::string_view line) {
                        if (m_state != SourceState::Live) {
                            return;
                        }
                        const QByteArray raw(line.data(), static_cast<qsizetype>(line.size()));
                        Q_EMIT came(raw);
                        const auto reading = m_matcher.read(line);
                        if (reading) {
                            Q_EMIT read({*reading, at});
                        } else {
                            ++m_refusals;
                            Q_EMIT refused(raw, reading.error());
                        }
                    });
}

}  // namespace hearth::ui::gauge
