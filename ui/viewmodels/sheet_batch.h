// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <deque>
#include <optional>
#include <vector>

#include "batch/sheet_choice.h"
#include "batch/sheet_reader.h"
#include "viewmodels/sheet_paper.h"
#include "viewmodels/visit_record.h"
#include "viewmodels/worker.h"

namespace wetfront::ui {

/// The sheets of many visits, one after the other, as files of a folder: read in turns of the event loop, a
/// few milliseconds each, drawn and written by another thread, one at a time. GUI thread; nobody else may
/// change the record file meanwhile.
class SheetBatch : public QObject {
    Q_OBJECT

public:
    struct Order {
        std::vector<Id> houses;
        SheetChoice choice;
        SheetKind kind = SheetKind::commissioning;
        Formatter reader;
        Paper size = Paper::letter;
        QString folder;  ///< is there
    };
    /// A sheet that could not be made.
    struct Missing {
        QString visit;  ///< its id; of a house whose visits cannot be listed, the house's
        QString why;
    };

    SheetBatch(const Context& context, const SheetPaper& paper, QObject* parent);

    void begin(Order order);
    /// Ends after the file at hand.
    void stop() { stopped_ = true; }
    [[nodiscard]] bool running() const { return running_; }

    // How far it is, and when it has ended, what came of it.
    [[nodiscard]] int houses_left() const {
        return static_cast<int>(houses_.size());
    }  ///< to look for visits in
    [[nodiscard]] int chosen() const { return chosen_; }
    [[nodiscard]] int done() const { return chosen_ - static_cast<int>(visits_.size()); }
    [[nodiscard]] const QStringList& files() const { return files_; }  ///< written, with their folder
    [[nodiscard]] const std::vector<Missing>& missing() const { return missing_; }
    [[nodiscard]] const std::optional<FileFailure>& failure() const { return failure_; }  ///< that ended it
    [[nodiscard]] bool stopped() const { return stopped_; }

signals:
    void progressed();
    void ended();

private:
    /// What the other thread made of one sheet.
    struct Made {
        std::optional<Error> not_made;
        std::optional<FileFailure> not_kept;
        QString file;
    };
    void take_turn();
    void look_into_a_house();
    void read_on();
    void make(SheetSource source);
    void take(const Made& made);
    void next();
    void miss(const Id& id, const Error& error);
    void end();

    Context context_;
    const SheetPaper& paper_;
    Order order_;
    std::optional<SheetReader> reader_;
    std::deque<Id> houses_;
    std::deque<Id> visits_;  ///< without a sheet yet
    bool reading_ = false;   ///< the first of them
    int chosen_ = 0;
    QStringList files_;
    std::vector<Missing> missing_;
    std::optional<FileFailure> failure_;
    bool running_ = false;
    bool stopped_ = false;
    QTimer turn_;
    Worker worker_{this};
};

}  // namespace wetfront::ui
