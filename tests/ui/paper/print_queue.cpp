// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/print_queue.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QThread>

namespace hearth::testing {

namespace {

constexpr const char* kScheduler = "/usr/sbin/cupsd";
constexpr const char* kRunner = "/usr/lib/cups/daemon/cups-exec";
constexpr int kLongest = 20000;  // milliseconds

constexpr const char* kConfiguration = R"(Listen %1/socket
LogLevel warn
Browsing No
WebInterface No
DefaultAuthType None
<Location />
  Order allow,deny
  Allow all
</Location>
<Location /admin>
  Order allow,deny
  Allow all
</Location>
<Policy default>
  JobPrivateAccess all
  JobPrivateValues none
  SubscriptionPrivateAccess all
  SubscriptionPrivateValues none
  <Limit All>
    Order allow,deny
    Allow all
  </Limit>
</Policy>
)";

constexpr const char* kFiles = R"(FileDevice Yes
ServerRoot %1/root
ServerBin %1/bin
RequestRoot %1/spool
TempDir %1/spool/tmp
CacheDir %1/cache
StateDir %1/state
AccessLog %1/access.log
ErrorLog %1/error.log
PageLog %1/page.log
Sandboxing relaxed
)";

/// Takes PDF as it is. Source of the keywords: Adobe, PostScript Printer Description File Format
/// Specification 4.3; CUPS PPD extensions.
constexpr const char* kPrinter = R"ppd(*PPD-Adobe: "4.3"
*FormatVersion: "4.3"
*FileVersion: "1.0"
*LanguageVersion: English
*LanguageEncoding: ISOLatin1
*PCFileName: "PASSON.PPD"
*Manufacturer: "Sample"
*Product: "(Sample)"
*ModelName: "Passes pages on"
*ShortNickName: "Passes pages on"
*NickName: "Passes pages on"
*PSVersion: "(3010.000) 0"
*LanguageLevel: "3"
*ColorDevice: True
*DefaultColorSpace: RGB
*cupsVersion: 2.3
*cupsFilter: "application/pdf 0 passon"
*OpenUI *PageSize: PickOne
*OrderDependency: 10 AnySetup *PageSize
*DefaultPageSize: A5
*PageSize A5/A5: ""
*PageSize A4/A4: ""
*PageSize Letter/US Letter: ""
*CloseUI: *PageSize
*OpenUI *PageRegion: PickOne
*OrderDependency: 10 AnySetup *PageRegion
*DefaultPageRegion: A5
*PageRegion A5/A5: ""
*PageRegion A4/A4: ""
*PageRegion Letter/US Letter: ""
*CloseUI: *PageRegion
*DefaultImageableArea: A5
*ImageableArea A5: "12 12 408 583"
*ImageableArea A4: "12 12 583 830"
*ImageableArea Letter: "12 12 600 780"
*DefaultPaperDimension: A5
*PaperDimension A5: "420 595"
*PaperDimension A4: "595 842"
*PaperDimension Letter: "612 792"
*OpenUI *Duplex/Both sides: PickOne
*OrderDependency: 20 AnySetup *Duplex
*DefaultDuplex: None
*Duplex None/Off: ""
*Duplex DuplexNoTumble/Long edge: ""
*CloseUI: *Duplex
)ppd";

bool put(const QString& path, const QString& text) {
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(text.toUtf8()) > 0;
}

}  // namespace

PrintQueue::~PrintQueue() {
    if (m_scheduler.state() != QProcess::NotRunning) {
        m_scheduler.terminate();
        if (!m_scheduler.waitForFinished(kLongest)) {
            m_scheduler.kill();
            m_scheduler.waitForFinished(kLongest);
        }
    }
}

bool PrintQueue::writeConfiguration() const {
    const QDir folder(m_folder.path());
    for (const char* name :
         {"root", "bin/filter", "bin/backend", "bin/daemon", "spool/tmp", "cache", "state"}) {
        if (!folder.mkpath(QString::fromLatin1(name))) {
            return false;
        }
    }
    // What drives a queue runs as another user, who must be able to reach it.
    const auto readable = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner | QFile::ReadGroup |
                          QFile::ExeGroup | QFile::ReadOther | QFile::ExeOther;
    const QString passOn = in(QStringLiteral("bin/filter/passon"));
    return put(in(QStringLiteral("root/cupsd.conf")),
               QString::fromLatin1(kConfiguration).arg(m_folder.path())) &&
           put(in(QStringLiteral("root/cups-files.conf")),
               QString::fromLatin1(kFiles).arg(m_folder.path())) &&
           put(in(QStringLiteral("printer.ppd")), QString::fromLatin1(kPrinter)) &&
           put(passOn, QStringLiteral("#!/bin/sh\ncat ${6:+\"$6\"}\n")) &&
           QFile::setPermissions(passOn, readable) && QFile::setPermissions(m_folder.path(), readable) &&
           QFile::link(QString::fromLatin1(kRunner), in(QStringLiteral("bin/daemon/cups-exec")));
}

QByteArray PrintQueue::ask(const QString& program, const QStringList& arguments) {
    QProcess process;
    auto surroundings = QProcessEnvironment::systemEnvironment();
    surroundings.insert(QStringLiteral("CUPS_SERVER"), server());
    process.setProcessEnvironment(surroundings);
    process.start(program, arguments);
    process.waitForFinished(kLongest);
    return process.readAllStandardOutput();
}

QString PrintQueue::start() {
    if (!QFile::exists(QString::fromLatin1(kScheduler))) {
        return QStringLiteral("no cupsd here: install cups-daemon and cups-client");
    }
    if (!m_folder.isValid() || !writeConfiguration()) {
        return QStringLiteral("its folder can't be written");
    }
    m_scheduler.start(QString::fromLatin1(kScheduler),
                      {QStringLiteral("-f"), QStringLiteral("-c"), in(QStringLiteral("root/cupsd.conf")),
                       QStringLiteral("-s"), in(QStringLiteral("root/cups-files.conf"))});
    QElapsedTimer waited;
    waited.start();
    const auto queue = [this] {
        return ask(QStringLiteral("lpstat"), {QStringLiteral("-p"), name()}).contains("pages");
    };
    while (!queue()) {
        if (waited.hasExpired(kLongest) || m_scheduler.state() == QProcess::NotRunning) {
            return QStringLiteral("cupsd does not run here: ") +
                   QString::fromUtf8(m_scheduler.readAllStandardError());
        }
        ask(QStringLiteral("/usr/sbin/lpadmin"),
            {QStringLiteral("-p"), name(), QStringLiteral("-v"),
             QStringLiteral("file://") + in(QStringLiteral("printed.pdf")), QStringLiteral("-P"),
             in(QStringLiteral("printer.ppd")), QStringLiteral("-E")});
        QThread::msleep(100);
    }
    return {};
}

QString PrintQueue::printed() {
    QElapsedTimer waited;
    waited.start();
    const QStringList unfinished{QStringLiteral("-W"), QStringLiteral("not-completed"), QStringLiteral("-o")};
    while (!ask(QStringLiteral("lpstat"), unfinished).isEmpty() && !waited.hasExpired(kLongest)) {
        QThread::msleep(50);
    }
    return in(QStringLiteral("printed.pdf"));
}

int PrintQueue::jobs() {
    return static_cast<int>(
        ask(QStringLiteral("lpstat"), {QStringLiteral("-W"), QStringLiteral("all"), QStringLiteral("-o")})
            .count('\n'));
}

}  // namespace hearth::testing
