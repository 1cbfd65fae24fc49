// SPDX-License-Identifier: Apache-2.0
#include "watched_disk.h"

#include <unistd.h>

#include <algorithm>
#include <cstring>
#include <new>
#include <stdexcept>

namespace wetfront::test {
namespace {

// SQLite's and the linker's callbacks come without a word on whom they belong to.
WatchedDisk* living = nullptr;

struct Extra {
    WatchedDisk* disk;
    std::string path;
    bool syncs_folder;  ///< at its first sync, as SQLite does for a journal that it may have made
};

struct WatchedFile {
    sqlite3_file base;
    sqlite3_file* real;
    Extra* extra;
};

WatchedFile& of(sqlite3_file* file) {
    return *reinterpret_cast<WatchedFile*>(file);
}
sqlite3_file* real_of(sqlite3_file* file) {
    return of(file).real;
}
int asked(sqlite3_file* file, DiskCall call) {
    return of(file).extra->disk->asked(call);
}
void changed(sqlite3_file* file, DiskEvent::Kind kind, std::string bytes = {}, std::int64_t at = 0) {
    of(file).extra->disk->changed({kind, of(file).extra->path, std::move(bytes), at});
}

int close(sqlite3_file* file) {
    const int result = real_of(file)->pMethods->xClose(real_of(file));
    delete of(file).extra;
    return result;
}

int read(sqlite3_file* file, void* into, int size, sqlite3_int64 at) {
    const int problem = asked(file, DiskCall::read);
    if (problem != SQLITE_OK && problem != SQLITE_IOERR_SHORT_READ) {
        return problem;
    }
    const int result = real_of(file)->pMethods->xRead(real_of(file), into, size, at);
    if (problem == SQLITE_OK) {
        return result;
    }
    std::memset(into, 0, static_cast<std::size_t>(size));
    return problem;
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 at) {
    const int problem = asked(file, DiskCall::write);
    // A write that fails may have been half done.
    const int done = problem == SQLITE_OK ? size : size / 2;
    const int result = real_of(file)->pMethods->xWrite(real_of(file), from, done, at);
    changed(file, DiskEvent::Kind::wrote, {static_cast<const char*>(from), static_cast<std::size_t>(done)},
            at);
    return problem == SQLITE_OK ? result : problem;
}

int truncate(sqlite3_file* file, sqlite3_int64 size) {
    if (const int problem = asked(file, DiskCall::truncate)) {
        return problem;
    }
    changed(file, DiskEvent::Kind::truncated, {}, size);
    return real_of(file)->pMethods->xTruncate(real_of(file), size);
}

int sync(sqlite3_file* file, int) {
    if (const int problem = asked(file, DiskCall::sync)) {
        changed(file, DiskEvent::Kind::sync_failed);
        return problem;
    }
    changed(file, DiskEvent::Kind::synced);
    auto& extra = *of(file).extra;
    if (extra.syncs_folder) {
        extra.syncs_folder = false;
        extra.disk->changed({DiskEvent::Kind::synced_folder, extra.path.substr(0, extra.path.rfind('/'))});
    }
    return SQLITE_OK;
}

int file_size(sqlite3_file* file, sqlite3_int64* size) {
    const int problem = asked(file, DiskCall::file_size);
    return problem != SQLITE_OK ? problem : real_of(file)->pMethods->xFileSize(real_of(file), size);
}
int lock(sqlite3_file* file, int level) {
    const int problem = asked(file, DiskCall::lock);
    return problem != SQLITE_OK ? problem : real_of(file)->pMethods->xLock(real_of(file), level);
}
int unlock(sqlite3_file* file, int level) {
    return real_of(file)->pMethods->xUnlock(real_of(file), level);
}
int check_reserved_lock(sqlite3_file* file, int* held) {
    const int problem = asked(file, DiskCall::lock);
    return problem != SQLITE_OK ? problem : real_of(file)->pMethods->xCheckReservedLock(real_of(file), held);
}
int file_control(sqlite3_file* file, int what, void* value) {
    return real_of(file)->pMethods->xFileControl(real_of(file), what, value);
}
int sector_size(sqlite3_file* file) {
    return real_of(file)->pMethods->xSectorSize(real_of(file));
}
int characteristics(sqlite3_file* file) {
    return real_of(file)->pMethods->xDeviceCharacteristics(real_of(file));
}
int shm_map(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
    const int problem = asked(file, DiskCall::shared_memory);
    return problem != SQLITE_OK ? problem
                                : real_of(file)->pMethods->xShmMap(real_of(file), page, size, extend, memory);
}
int shm_lock(sqlite3_file* file, int offset, int count, int flags) {
    return real_of(file)->pMethods->xShmLock(real_of(file), offset, count, flags);
}
void shm_barrier(sqlite3_file* file) {
    real_of(file)->pMethods->xShmBarrier(real_of(file));
}
int shm_unmap(sqlite3_file* file, int remove) {
    return real_of(file)->pMethods->xShmUnmap(real_of(file), remove);
}

constexpr sqlite3_io_methods methods{2,
                                     close,
                                     read,
                                     write,
                                     truncate,
                                     sync,
                                     file_size,
                                     lock,
                                     unlock,
                                     check_reserved_lock,
                                     file_control,
                                     sector_size,
                                     characteristics,
                                     shm_map,
                                     shm_lock,
                                     shm_barrier,
                                     shm_unmap,
                                     nullptr,
                                     nullptr};

WatchedDisk& disk_of(sqlite3_vfs* vfs) {
    return *static_cast<WatchedDisk*>(vfs->pAppData);
}

int open(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* got) {
    auto& disk = disk_of(vfs);
    file->pMethods = nullptr;
    if (const int problem = disk.asked(DiskCall::open)) {
        return problem;
    }
    const bool is_new = name != nullptr && ::access(name, F_OK) != 0;
    auto& mine = of(file);
    mine.real = reinterpret_cast<sqlite3_file*>(reinterpret_cast<char*>(file) + sizeof(WatchedFile));
    const int result = disk.real()->xOpen(disk.real(), name, mine.real, flags, got);
    if (mine.real->pMethods == nullptr) {
        return result;
    }
    constexpr int journals = SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL | SQLITE_OPEN_WAL;
    mine.extra = new Extra{&disk, name == nullptr ? "" : name,
                           (flags & SQLITE_OPEN_CREATE) != 0 && (flags & journals) != 0};
    mine.base.pMethods = &methods;
    if (is_new && result == SQLITE_OK) {
        changed(file, DiskEvent::Kind::made);
    }
    return result;
}

int remove(sqlite3_vfs* vfs, const char* name, int sync_folder) {
    auto& disk = disk_of(vfs);
    if (const int problem = disk.asked(DiskCall::remove)) {
        return problem;
    }
    const int result = disk.real()->xDelete(disk.real(), name, sync_folder);
    if (result == SQLITE_OK) {
        const std::string path = name;
        disk.changed({DiskEvent::Kind::removed, path});
        if (sync_folder != 0) {
            disk.changed({DiskEvent::Kind::synced_folder, path.substr(0, path.rfind('/'))});
        }
    }
    return result;
}

int access(sqlite3_vfs* vfs, const char* name, int flags, int* answer) {
    auto& disk = disk_of(vfs);
    const int problem = disk.asked(DiskCall::access);
    return problem != SQLITE_OK ? problem : disk.real()->xAccess(disk.real(), name, flags, answer);
}

int full_path(sqlite3_vfs* vfs, const char* name, int size, char* path) {
    return disk_of(vfs).real()->xFullPathname(disk_of(vfs).real(), name, size, path);
}

}  // namespace

WatchedDisk::WatchedDisk() : real_{sqlite3_vfs_find("unix")}, vfs_{} {
    if (living != nullptr || real_ == nullptr) {
        throw std::runtime_error{"one watched disk at a time"};
    }
    // The rest (random bytes, time, loading of libraries) takes no file system: the real one's functions do.
    vfs_ = *real_;
    vfs_.iVersion = 2;
    vfs_.pNext = nullptr;
    vfs_.szOsFile = static_cast<int>(sizeof(WatchedFile)) + real_->szOsFile;
    vfs_.zName = "watched";
    vfs_.pAppData = this;
    vfs_.xOpen = open;
    vfs_.xDelete = remove;
    vfs_.xAccess = access;
    vfs_.xFullPathname = full_path;
    sqlite3_vfs_register(&vfs_, 1);
    living = this;
}

WatchedDisk::~WatchedDisk() {
    living = nullptr;
    sqlite3_vfs_unregister(&vfs_);
    sqlite3_vfs_register(real_, 1);
}

WatchedDisk* WatchedDisk::present() {
    return living;
}

void WatchedDisk::break_at(const Fault& fault) {
    fault_ = fault;
    counted_ = 0;
    failed_ = 0;
}

int WatchedDisk::asked(DiskCall call) {
    if (!fault_ || fault_->call != call) {
        return SQLITE_OK;
    }
    ++counted_;
    if (counted_ == fault_->nth || (fault_->for_ever && counted_ > fault_->nth)) {
        ++failed_;
        return fault_->code;
    }
    return SQLITE_OK;
}

void WatchedDisk::changed(DiskEvent event) const {
    if (listener_) {
        listener_(std::move(event));
    }
}

}  // namespace wetfront::test
