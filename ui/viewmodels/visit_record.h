// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QTimer>
#include <deque>
#include <optional>
#include <vector>

#include "cycle/proof.h"
#include "cycle/visit_water.h"
#include "format/formatter.h"
#include "records/finding.h"
#include "store/store.h"

namespace wetfront::ui {

/// What the view models share: where records are kept, what time it is, how numbers are shown. Outlives them
/// all.
struct Context {
    Store& store;
    const Clock& clock;
    Formatter& formatter;
};

/// The visit at hand with its house and farm: every change is stored before it is announced, and everything
/// derived (timings, advice, findings) is worked out from it when asked. GUI thread.
class VisitRecord : public QObject {
    Q_OBJECT

public:
    VisitRecord(const Context& context, VisitFile file, QObject* parent);

    [[nodiscard]] const Context& context() const { return context_; }
    [[nodiscard]] const VisitFile& file() const { return file_; }
    /// Nothing of it can be changed: it is signed, or the record file is only looked at.
    [[nodiscard]] bool frozen() const { return file_.visit.is_signed() || read_only(); }
    [[nodiscard]] bool read_only() const { return context_.store.mode() == OpenMode::read_only; }

    // For forms: change the record, then call the matching save; where that fails, put back what was there.
    [[nodiscard]] Farm& farm() { return file_.farm; }
    [[nodiscard]] House& house() { return file_.house; }
    [[nodiscard]] Visit& visit() { return file_.visit; }
    [[nodiscard]] Result<void> save_farm();
    [[nodiscard]] Result<void> save_house();
    [[nodiscard]] Result<void> save_visit();
    /// The visit with its signature, and its sheet with it.
    [[nodiscard]] Result<void> save_signed(std::string_view pdf);
    /// The visit with one photo more, and its bytes with it.
    [[nodiscard]] Result<void> save_with_photo(std::string_view jpeg);

    /// Takes back the last entry of the visit, its house or its farm, or makes it again (Store::undo), and
    /// reads all three anew. None: there is no such entry. Refused also while marks wait to be stored.
    [[nodiscard]] Result<std::optional<UndoStep>> undo();
    [[nodiscard]] Result<std::optional<UndoStep>> redo();

    // A press, and its undoing, goes into the journal before anything shows it. If that fails it is kept in
    // memory, counted as not stored, and tried again with the next one and by itself: after half a second,
    // then after twice as long each time, at most half a minute.
    void add_mark(Mark mark);
    void set_undone(const Id& mark, bool undone);
    void store_waiting();
    /// Tries once more to store what waits and then lets go of it and of the store: the visit is left.
    void close();
    [[nodiscard]] int presses_not_stored() const { return static_cast<int>(waiting_.size()); }
    /// Writes the visit's presses, stored and not, into a file in that folder (made if it is not there),
    /// readable by its owner alone, and reads it back; returns its path. They go on waiting for the record
    /// file.
    [[nodiscard]] Result<QString> write_presses(const QString& folder) const;
    [[nodiscard]] QString storage_problem() const { return storage_problem_; }

    [[nodiscard]] const VisitTimings& timings();
    [[nodiscard]] const VisitWater& water();
    [[nodiscard]] const Advice& advice();
    [[nodiscard]] const ProofRun& proof();
    [[nodiscard]] const std::vector<Finding>& found_findings();
    [[nodiscard]] const std::vector<Finding>& left_findings();

signals:
    void changed();
    void entries_changed();  ///< after changed(), where it was not by a mark
    void storage_problem_changed();

private:
    Result<void> announce(Result<void> result);
    Result<void> announce_entry(Result<void> result);
    Result<std::optional<UndoStep>> turn(Result<std::optional<UndoStep>> (Store::*way)(const Id& visit));
    void take_in_named_templates();
    struct Waiting;
    [[nodiscard]] Result<void> store_one(const Waiting& waiting);
    void wait_with(std::optional<Mark> mark, const Id& id, bool undone);
    void forget_derived();
    void set_storage_problem(const QString& problem);

    Context context_;
    VisitFile file_;
    /// A press or a change of one that is only in memory yet, in the order in which they were made.
    struct Waiting {
        std::optional<Mark> mark;  ///< as pressed; none: a change of one that is stored or before in the list
        Id id;
        bool undone = false;
    };
    std::deque<Waiting> waiting_;
    QTimer retry_;
    QString storage_problem_;
    std::optional<VisitTimings> timings_;
    std::optional<VisitWater> water_;  ///< marks don't change it
    std::optional<Advice> advice_;
    std::optional<ProofRun> proof_;
    std::optional<std::vector<Finding>> found_;
    std::optional<std::vector<Finding>> left_;
};

}  // namespace wetfront::ui
