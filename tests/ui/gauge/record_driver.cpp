// SPDX-License-Identifier: GPL-3.0-or-later
// Records readings of "N.NN mbar", ten a second, of two gauges until it is killed.
//
//     record_driver FOLDER    says "N" for each reading once both recorders have it

#include "ui/gauge/recorder.h"

#include <QCoreApplication>

#include <cstdio>

int main(int argc, char** argv) {
    using namespace hearth;
    QCoreApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    const SystemClock clock;
    const QString folder = QString::fromLocal8Bit(argv[1]);
    ui::gauge::Recorder recorder(clock);
    ui::gauge::Recorder second(clock);
    recorder.begin({"driver"}, folder);
    second.beginBeside(recorder, {"second"}, folder);
    QTimer beat;
    beat.setTimerType(Qt::PreciseTimer);
    std::int64_t count = 0;
    QObject::connect(&beat, &QTimer::timeout, &beat, [&] {
        ui::gauge::GaugeReading reading;
        reading.line.value = quantity::Decimal(++count, 2);
        reading.line.unit = quantity::UnitCode::Millibar;
        reading.at = clock.elapsed();
        recorder.add(reading);
        second.add(reading);
        std::printf("%lld\n", static_cast<long long>(count));
        std::fflush(stdout);
    });
    beat.start(100);
    return QCoreApplication::exec();
}
