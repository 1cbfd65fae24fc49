// SPDX-License-Identifier: Apache-2.0
#include "desktop/print_system.h"

#include <QDeadlineTimer>
#include <QProcess>

namespace wetfront::ui {
namespace {

constexpr int longest_wait_ms = 10'000;

}  // namespace

Result<void> print_file_bytes(const QByteArray& pdf, const QString& printer, int copies) {
    const auto not_printed = [&](const std::string& cause,
                                 const char* way_out =
                                     "nothing was printed; save the sheet as PDF and print that file") {
        return storage_error("printer " + printer.toStdString(), cause, way_out);
    };
    const QDeadlineTimer deadline{longest_wait_ms};
    const auto left = [&deadline] { return static_cast<int>(deadline.remainingTime()); };
    QProcess lp;
    lp.start(QStringLiteral("lp"),
             {QStringLiteral("-d"), printer, QStringLiteral("-n"), QString::number(copies)});
    if (!lp.waitForStarted(left())) {
        return not_printed("the command lp is not there");
    }
    lp.write(pdf);
    lp.closeWriteChannel();
    if (!lp.waitForFinished(left())) {
        lp.kill();
        return not_printed(
            "it takes too long",
            "look at the printer whether it prints; if not, save the sheet as PDF and print that file");
    }
    if (lp.exitStatus() != QProcess::NormalExit || lp.exitCode() != 0) {
        return not_printed(lp.readAllStandardError().trimmed().toStdString());
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::ui
