// SPDX-License-Identifier: Apache-2.0
#include "desktop/print_system.h"

#include <QDeadlineTimer>
#include <QProcess>

namespace wetfront::ui {
namespace {

constexpr int longest_wait_ms = 10'000;
constexpr int longer_for_each_file_ms = 1'000;

/// `pdf` is what lp reads where no files are named.
Result<void> run_lp(const QByteArray& pdf, const QStringList& files, const QString& printer, int copies) {
    const auto not_printed = [&](const std::string& cause,
                                 const char* way_out =
                                     "nothing was printed; save the sheet as PDF and print that file") {
        return storage_error("printer " + printer.toStdString(), cause, way_out);
    };
    const QDeadlineTimer deadline{longest_wait_ms + longer_for_each_file_ms * files.size()};
    const auto left = [&deadline] { return static_cast<int>(deadline.remainingTime()); };
    QProcess lp;
    lp.start(
        QStringLiteral("lp"),
        QStringList{QStringLiteral("-d"), printer, QStringLiteral("-n"), QString::number(copies)} + files);
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

}  // namespace

Result<void> print_file_bytes(const QByteArray& pdf, const QString& printer, int copies) {
    return run_lp(pdf, {}, printer, copies);
}

Result<void> print_files(const QStringList& files, const QString& printer, int copies) {
    return run_lp({}, files, printer, copies);
}

}  // namespace wetfront::ui
