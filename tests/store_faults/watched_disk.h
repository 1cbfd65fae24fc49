// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <sqlite3.h>

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace wetfront::test {

/// What a disk is asked to do.
enum class DiskCall {
    read,
    write,
    sync,
    truncate,
    open,
    remove,
    access,
    file_size,
    lock,
    shared_memory,
    rename
};
constexpr std::size_t disk_calls = 11;

/// The nth call of one sort does not work, and if `for_ever` none after it.
struct Fault {
    DiskCall call = DiskCall::read;
    int nth = 1;
    bool for_ever = false;
    int code = SQLITE_IOERR;  ///< an SQLite result; SQLITE_IOERR_SHORT_READ: as if the file ended before
};

/// A change of the disk. Paths are absolute.
struct DiskEvent {
    enum class Kind {
        made,
        wrote,
        truncated,
        synced,
        sync_failed,
        removed,
        renamed,
        made_folder,
        synced_folder
    };
    Kind kind = Kind::wrote;
    std::string path;
    std::string other = {};  ///< renamed: the new name; wrote: the bytes
    std::int64_t at = 0;     ///< wrote: where; truncated: the size
};

/// While it lives SQLite's default file system (VFS), which hands all calls on to the real one, makes one
/// fail when asked, and tells what changes. It does not sync for real: only a power cut could tell. The
/// store's own calls of the operating system come here too. One at a time.
class WatchedDisk {
public:
    WatchedDisk();
    ~WatchedDisk();
    WatchedDisk(const WatchedDisk&) = delete;
    WatchedDisk& operator=(const WatchedDisk&) = delete;

    /// Counts calls from now on.
    void break_at(const Fault& fault);
    void repair() { fault_.reset(); }
    [[nodiscard]] bool has_failed() const { return failed_ > 0; }

    void tell(std::function<void(DiskEvent)> listener) { listener_ = std::move(listener); }

    // For the calls of SQLite and of the store.
    /// The result that the call must give instead of doing its work, or SQLITE_OK.
    [[nodiscard]] int asked(DiskCall call);
    void changed(DiskEvent event) const;
    [[nodiscard]] sqlite3_vfs* real() const { return real_; }
    /// The one that lives, or none.
    [[nodiscard]] static WatchedDisk* present();

private:
    sqlite3_vfs* real_;
    sqlite3_vfs vfs_;
    std::optional<Fault> fault_;
    int counted_ = 0;
    int failed_ = 0;
    std::function<void(DiskEvent)> listener_;
};

}  // namespace wetfront::test
