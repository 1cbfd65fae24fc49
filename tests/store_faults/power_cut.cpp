// SPDX-License-Identifier: Apache-2.0
#include "power_cut.h"

#include <algorithm>
#include <fstream>
#include <stdexcept>

#include "core/store/samples.h"

namespace wetfront::test {
namespace {

using Kind = DiskEvent::Kind;

constexpr std::size_t sector = 512;

std::string folder_of(const std::string& path) {
    return path.substr(0, path.rfind('/'));
}

void write(std::string& bytes, std::string_view piece, std::size_t at) {
    if (bytes.size() < at + piece.size()) {
        bytes.resize(at + piece.size());
    }
    bytes.replace(at, piece.size(), piece);
}

/// Some sectors of a write, cut where the disk's sectors end.
void write_torn(std::string& bytes, const DiskEvent& event, std::mt19937& random) {
    const auto start = static_cast<std::size_t>(event.at);
    for (std::size_t at = start; at < start + event.other.size();) {
        const auto end = std::min((at / sector + 1) * sector, start + event.other.size());
        if (random() % 2 == 0) {
            write(bytes, std::string_view{event.other}.substr(at - start, end - at), at);
        }
        at = end;
    }
}

void carry_out(std::string& bytes, const DiskEvent& event) {
    if (event.kind == Kind::wrote) {
        write(bytes, event.other, static_cast<std::size_t>(event.at));
    } else {
        bytes.resize(static_cast<std::size_t>(event.at));
    }
}

enum class Fate { all, none, each, torn };

void settle(std::string& bytes, const std::vector<DiskEvent>& since, Fate fate, std::mt19937& random) {
    for (const auto& event : since) {
        const bool torn = fate == Fate::torn && event.kind == Kind::wrote && random() % 2 == 0;
        if (torn) {
            write_torn(bytes, event, random);
        } else if (fate == Fate::all || (fate != Fate::none && random() % 2 == 0)) {
            carry_out(bytes, event);
        }
    }
}

Fate any_fate(std::mt19937& random) {
    return static_cast<Fate>(random() % 4);
}

void apply_name(std::map<std::string, int>& names, const DiskEvent& event, int number) {
    if (event.kind == Kind::removed) {
        names.erase(event.path);
    } else if (event.kind == Kind::renamed) {
        names.erase(event.path);
        names[event.other] = number;
    } else {
        names[event.path] = number;
    }
}

}  // namespace

Disk::Disk(const std::filesystem::path& root) : root_{root} {
    folders_[root.string()];
    for (const auto& entry : std::filesystem::directory_iterator{root}) {
        const auto path = entry.path().string();
        now_[path] = static_cast<int>(contents_.size());
        folders_[root.string()].synced[path] = now_[path];
        contents_.push_back({bytes_of(entry.path()), {}});
    }
}

Disk::Content& Disk::content(const std::string& path) {
    const auto found = now_.find(path);
    if (found == now_.end() || found->second == a_folder) {
        throw std::runtime_error{"a change of a file that nobody made: " + path};
    }
    return contents_[static_cast<std::size_t>(found->second)];
}

void Disk::name_changed(const std::string& folder, const DiskEvent& event, int number) {
    apply_name(now_, event, number);
    folders_[folder].since.push_back(event);
    folders_[folder].numbers.push_back(number);
}

void Disk::apply(const DiskEvent& event, std::mt19937& random) {
    switch (event.kind) {
        case Kind::made:
            contents_.emplace_back();
            return name_changed(folder_of(event.path), event, static_cast<int>(contents_.size()) - 1);
        case Kind::made_folder:
            return name_changed(folder_of(event.path), event, a_folder);
        case Kind::removed:
            return name_changed(folder_of(event.path), event, 0);
        case Kind::renamed:
            return name_changed(folder_of(event.path), event, now_.at(event.path));
        case Kind::wrote:
        case Kind::truncated:
            content(event.path).since.push_back(event);
            return;
        case Kind::synced:
        case Kind::sync_failed: {
            auto& file = content(event.path);
            settle(file.synced, file.since, event.kind == Kind::synced ? Fate::all : any_fate(random),
                   random);
            file.since.clear();
            return;
        }
        case Kind::synced_folder: {
            auto& names = folders_[event.path];
            for (std::size_t i = 0; i < names.since.size(); ++i) {
                apply_name(names.synced, names.since[i], names.numbers[i]);
            }
            names.since.clear();
            names.numbers.clear();
            return;
        }
    }
}

void Disk::leave(const std::filesystem::path& into, std::mt19937& random) const {
    const auto fate = any_fate(random);
    // Outer folders come first: their names are shorter.
    for (const auto& [folder, names] : folders_) {
        const auto place = into / std::filesystem::path{folder}.lexically_relative(root_);
        if (!std::filesystem::is_directory(place)) {
            continue;  // its own name is lost, and all in it
        }
        auto kept = names.synced;
        const auto most = names.since.size();
        const auto first = fate == Fate::all ? most : fate == Fate::none ? 0 : random() % (most + 1);
        for (std::size_t i = 0; i < first; ++i) {
            apply_name(kept, names.since[i], names.numbers[i]);
        }
        for (const auto& [path, number] : kept) {
            const auto target = into / std::filesystem::path{path}.lexically_relative(root_);
            if (number == a_folder) {
                std::filesystem::create_directory(target);
                continue;
            }
            const auto& file = contents_[static_cast<std::size_t>(number)];
            auto bytes = file.synced;
            settle(bytes, file.since, fate, random);
            std::ofstream{target, std::ios::binary} << bytes;
            // What shared memory was left is any bytes: nothing ever syncs it.
            if (path.ends_with("-wal") && random() % 2 == 0) {
                std::string rubbish(32768, '\0');
                std::generate(rubbish.begin(), rubbish.end(), [&] { return static_cast<char>(random()); });
                std::ofstream{target.string().substr(0, target.string().size() - 4) + "-shm",
                              std::ios::binary}
                    << rubbish;
            }
        }
    }
}

}  // namespace wetfront::test
