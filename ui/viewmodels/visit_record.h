// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QTimer>
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

    // For forms: change the record, then call the matching save; a save that fails reloads what is stored.
    [[nodiscard]] Farm& farm() { return file_.farm; }
    [[nodiscard]] House& house() { return file_.house; }
    [[nodiscard]] Visit& visit() { return file_.visit; }
    [[nodiscard]] Result<void> save_farm();
    [[nodiscard]] Result<void> save_house();
    [[nodiscard]] Result<void> save_visit();
    /// The visit with its signature, and its sheet with it.
    [[nodiscard]] Result<void> save_signed(std::string_view pdf);

    /// Takes back the last entry of the visit, its house or its farm, or makes it again (Store::undo), and
    /// reads all three anew. None: there is no such entry. Refused also while marks wait to be stored.
    [[nodiscard]] Result<std::optional<UndoStep>> undo();
    [[nodiscard]] Result<std::optional<UndoStep>> redo();

    /// Puts the mark into the journal. If that fails it is kept in memory, shown as not yet stored, and tried
    /// again every two seconds and before the next mark.
    void add_mark(Mark mark);
    [[nodiscard]] Result<void> set_undone(const Id& mark, bool undone);
    [[nodiscard]] int marks_not_stored() const { return static_cast<int>(waiting_.size()); }
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
    void marks_changed();
    void storage_problem_changed();

private:
    Result<void> announce(Result<void> result);
    Result<void> announce_entry(Result<void> result);
    Result<std::optional<UndoStep>> turn(Result<std::optional<UndoStep>> (Store::*way)(const Id& visit));
    void take_in_named_templates();
    void store_waiting_marks();
    void forget_derived();
    void set_storage_problem(const QString& problem);

    Context context_;
    VisitFile file_;
    std::vector<Mark> waiting_;
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
