// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "records/field_change.h"
#include "records/setting_template.h"
#include "records/visit.h"
#include "store/bundle.h"
#include "store/record_kind.h"

namespace wetfront {

/// A line of the houses list.
struct HouseSummary {
    Id house;
    Id farm;
    std::string house_name;
    std::string farm_name;
    int visits = 0;
    std::optional<Id> latest_visit;
    std::optional<WallTime> latest_visit_at;
    bool open_visit = false;  ///< the latest visit is not signed
};

struct VisitSummary {
    Id visit;
    WallTime started;
    bool is_signed = false;
    int revisions = 0;
    int marks = 0;               ///< without undone ones
    std::optional<Id> replaces;  ///< the visit that this one corrects
};

/// A record that the lists leave out.
struct RemovedRecord {
    RecordKind kind = RecordKind::house;
    Id id;
    std::string name;                 ///< as it is now; of a visit, that of its house
    std::optional<WallTime> started;  ///< visits only
    WallTime removed_at;
};

/// An entry that can be, or was, undone or redone. `before` and `after` are those of the entry, whichever way
/// it goes.
struct UndoStep {
    RecordKind kind = RecordKind::visit;
    Id record;
    WallTime entered_at;
    std::vector<FieldChange> changes;

    friend bool operator==(const UndoStep&, const UndoStep&) = default;
};

/// The sheet that was handed out at the signing.
struct SignedSheet {
    std::string pdf;     ///< every byte
    std::string sha256;  ///< of these bytes: 64 letters, 0-9 and a-f
    WallTime kept_at;
};
/// What a record file or a backup of it holds, as far as a person has to know before he goes back to it.
struct RecordContent {
    int entries = 0;                 ///< of every kind, from the first on
    std::optional<WallTime> latest;  ///< none: nothing was ever entered
    int houses = 0;
};

/// Told how far a copy is, 0 to 1; false stops it.
using CopyProgress = std::function<bool(double share)>;

enum class OpenMode { read_write, read_only };

/// Where a running stopwatch is looked for: in visits whose marks were added, undone or redone lately (the
/// last 1,000 of each), which takes no time however long the record is, or in all of them, a millisecond for
/// a thousand visits.
enum class TimedIn { latest_marks, all_marks };

/// The record file: one SQLite database, one connection, opened exclusively. Every call that returns without
/// an error has been committed and synced; after an error nothing of that call is seen. If it was the disk
/// that failed, the call may come to light, whole, when the file is opened the next time: doing the same
/// again is safe. Not thread-safe: one owner, one thread. No exception leaves this class.
///
/// Records (farms, houses, visits, setting templates) are append-only revisions; saving adds a revision whose
/// parent is the present one. Marks are rows of a journal of their own; undoing or redoing one adds a row
/// too, and so do removing a record and keeping a sheet. Nothing is updated or deleted, and each entry's hash
/// covers the one before it (chain.h); verify.h checks a file.
///
/// Errors of the file or the disk are storage errors; an unknown id, a refused value or a frozen visit is bad
/// input.
class Store {
public:
    /// Opens or makes the file. A folder made for it is 0700; the file is 0600 with all that stands beside it
    /// (journal, copies), whatever it was before. Errors: held by another program
    /// (who), not a record file of ours, from a newer version (refused for writing; read_only works),
    /// damaged, no permission, disk full. Migrations run here, each in one transaction, a copy of the file
    /// kept first. read_only makes no file and keeps others from writing meanwhile. `clock` must outlive the
    /// store.
    [[nodiscard]] static Result<Store> open(const std::filesystem::path& file, const Clock& clock,
                                            OpenMode mode = OpenMode::read_write);
    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    ~Store();

    [[nodiscard]] const Id& device() const;
    [[nodiscard]] const std::filesystem::path& file() const;
    [[nodiscard]] OpenMode mode() const;
    /// Told once, by the first opening for writing after it: bytes of the -wal file changed between a crash
    /// and that opening, and entries that had been confirmed are missing: which, what to do, and where that
    /// file is kept.
    [[nodiscard]] const std::optional<Error>& loss() const;
    [[nodiscard]] Result<RecordContent> content() const;
    /// How many entries were made since a copy of this file held that; none: it is not from an earlier state
    /// of this file.
    [[nodiscard]] Result<std::optional<int>> entries_since(const RecordContent& copy) const;
    [[nodiscard]] Id new_id();

    // Journal. A mark is on disk when add_mark returns. The visit must be there and not signed. The same mark
    // again adds nothing, so a press whose fate is unknown can be added again.
    [[nodiscard]] Result<void> add_mark(const Id& visit, const Mark& mark);
    [[nodiscard]] Result<void> set_undone(const Id& mark, bool undone);
    [[nodiscard]] Result<std::vector<Mark>> marks_of(
        const Id& visit) const;  ///< in the order in which they were added

    // Records. Saving what is already the present state adds nothing. A signed visit is frozen: saving a
    // change of it is an error, and so is changing house, start or `replaces` of any visit. A house needs its
    // farm saved first, a visit its house. What could not be read back (a value out of its field's range) is
    // refused.
    [[nodiscard]] Result<void> save(const Farm& farm);
    [[nodiscard]] Result<void> save(const House& house);
    [[nodiscard]] Result<void> save(const Visit& visit);  ///< all but its marks
    /// One that is still being entered too; check_template() says whether it can be used.
    [[nodiscard]] Result<void> save(const SettingTemplate& described);
    [[nodiscard]] Result<Farm> farm(const Id& id) const;
    [[nodiscard]] Result<House> house(const Id& id) const;
    [[nodiscard]] Result<Visit> visit(const Id& id) const;  ///< with its marks
    [[nodiscard]] Result<SettingTemplate> setting_template(const Id& id) const;
    /// With house and farm as they were described when the visit was signed, or as they are now for an open
    /// visit.
    [[nodiscard]] Result<VisitFile> visit_file(const Id& visit) const;

    // Lists, without what was removed: by name (farm, then house; numbers in names count as numbers), visits
    // latest first.
    [[nodiscard]] Result<std::vector<Farm>> farms() const;
    [[nodiscard]] Result<std::vector<SettingTemplate>> setting_templates() const;
    [[nodiscard]] Result<std::vector<HouseSummary>> houses() const;
    [[nodiscard]] Result<std::vector<VisitSummary>> visits_of(const Id& house) const;

    /// Takes a record out of the lists, or brings it back; it stays in the file and can be read by its id.
    /// Adds nothing if that is the present state. A house takes its visits out of sight with it, and brings
    /// back those that were not removed by themselves. Refused (bad input): a farm that has houses; a house
    /// or visit with a running stopwatch; a visit that another one corrects; bringing back what belongs to
    /// something removed, or putting a new house or visit there. A template that timers name stays readable
    /// by them.
    [[nodiscard]] Result<void> set_removed(RecordKind kind, const Id& id, bool removed);
    /// Removed last comes first.
    [[nodiscard]] Result<std::vector<RemovedRecord>> removed() const;

    // Undo and redo of entries, across restarts. A visit's timeline is every later revision of the visit, its
    // house and its farm since the visit's first one, in the order of writing, whichever screen or visit they
    // were made in: the last is undone first, so nothing newer is ever written over. Undoing adds a revision
    // equal to the one before the entry and naming it; redoing adds one equal to what the entry had made. A
    // new entry ends redoing. Marks have set_undone(), removed records set_removed(). A signed visit has no
    // timeline.
    //
    // Each gives the entry that it undid or redid, none if there is none. Refused (bad input) if marks or
    // settings of the visit would lose the part that they belong to. can_undo() and can_redo() tell what
    // would be next, and change nothing.
    [[nodiscard]] Result<std::optional<UndoStep>> undo(const Id& visit);
    [[nodiscard]] Result<std::optional<UndoStep>> redo(const Id& visit);
    [[nodiscard]] Result<std::optional<UndoStep>> can_undo(const Id& visit) const;
    [[nodiscard]] Result<std::optional<UndoStep>> can_redo(const Id& visit) const;

    /// Saves the signed visit and keeps its sheet, both or neither. The same again adds nothing; another
    /// sheet for a visit that has one, an unsigned visit and bytes that are no PDF are bad input.
    [[nodiscard]] Result<void> keep_sheet(const Visit& visit, std::string_view pdf);
    /// None if the visit is open or its sheet was not kept (signed by an older version, or read from a file).
    /// A sheet whose bytes no longer fit its hash is a storage error.
    [[nodiscard]] Result<std::optional<SignedSheet>> signed_sheet(const Id& visit) const;

    /// Saves the visit, which names the picture among its photos, and keeps the picture's bytes, both or
    /// neither. The same again adds nothing. Bad input: bytes that is_photo() refuses or that no photo of the
    /// visit names, and what save() refuses.
    [[nodiscard]] Result<void> keep_picture(const Visit& visit, std::string_view jpeg);
    /// None if its bytes are not here: the visit was read from a file, or the bundle with them has not come.
    /// Bytes that no longer fit their hash are a storage error.
    [[nodiscard]] Result<std::optional<std::string>> picture(const std::string& sha256) const;

    /// The newest open visit whose marks leave a pump running, or a bank dripping or drying after a stop in
    /// the last 24 h (longer makes no reading), or a pump watched in a proof run within the last hour: where
    /// a killed program reopens.
    [[nodiscard]] Result<std::optional<Id>> visit_with_running_stopwatch(
        TimedIn where = TimedIn::all_marks) const;

    /// Number of the visit's revision, 1 for the first.
    [[nodiscard]] Result<int> revision_of(const Id& visit) const;

    /// Adds farms, houses and visits with marks, all in one transaction. What is there with the same content
    /// stays as it is; an id that is there with other content is an error, and then nothing is added.
    [[nodiscard]] Result<void> add(std::span<const VisitFile> files);
    [[nodiscard]] Result<void> add(const VisitFile& file) { return add(std::span{&file, 1}); }

    // Bundles (bundle.h). What another device wrote comes in with its device, number, time and hash, in
    // whatever order and however often bundles come: the record is the same. Refused, and then nothing is
    // changed: a file that is not whole, of a later format, or that says otherwise than what is here (another
    // entry with the same number, another content with the same id, an entry of this device that is not
    // here). What this version cannot read, or what refers to something that has not come yet, is kept aside,
    // told, and passed on by every bundle.

    /// By name and id.
    [[nodiscard]] Result<std::vector<OtherDevice>> other_devices() const;
    /// Writes a bundle as a new file, read back from the medium before it gets its name. No file is written
    /// over.
    [[nodiscard]] Result<BundleMade> write_bundle(const BundleChoice& choice,
                                                  const std::filesystem::path& file) const;
    /// What take_in() would do. Nothing is changed.
    [[nodiscard]] Result<BundleReport> preview_bundle(std::string_view text);
    /// Takes in a bundle, all of it in one transaction.
    [[nodiscard]] Result<BundleReport> take_in(std::string_view text);
    /// Writes the receipt of a bundle whose every entry is here, which its sender reads back. A file with
    /// that name is replaced.
    [[nodiscard]] Result<void> write_receipt(std::string_view bundle,
                                             const std::filesystem::path& file) const;
    /// Notes what the receipt of another device acknowledges as delivered to it. Refused if it names entries
    /// that are not here or not the same.
    [[nodiscard]] Result<ReceiptRead> read_receipt(std::string_view text);
    /// Records that have several present states, by kind and id.
    [[nodiscard]] Result<std::vector<SplitRecord>> split_records() const;
    /// Makes the state of that revision the record's only one; the others stay in its history. Refused: a
    /// revision that is no present state of a split record; a visit of which a state is signed.
    [[nodiscard]] Result<void> choose_state(const std::string& revision);
    [[nodiscard]] Result<std::vector<KeptAside>> kept_aside() const;

    /// Writes a copy of all that is committed into the folder (made 0700 if it is not there), as
    /// "<name>-<day>-<clock>" with the record file's ending, read back from the medium and compared before it
    /// gets that name. Returns it. Errors: no room, no permission, a medium that does not keep what is
    /// written; stopped by `progress`. Another thread may do this while nobody else uses the store.
    [[nodiscard]] Result<std::filesystem::path> back_up(const std::filesystem::path& folder,
                                                        const CopyProgress& progress = {}) const;

private:
    struct Private;
    explicit Store(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d_;
};

}  // namespace wetfront
