// SPDX-License-Identifier: Apache-2.0
#include "store/backup.h"

#include <algorithm>
#include <regex>
#include <set>
#include <system_error>

#include "store/backup_name.h"

namespace wetfront {
namespace store_detail {

std::string name_part(WallTime time) {
    std::string clock = local_clock(time);
    std::erase(clock, ':');
    return local_date(time) + "-" + clock;
}

std::string backup_name(const std::filesystem::path& record_file, WallTime now) {
    return record_file.stem().string() + "-" + name_part(now) + record_file.extension().string();
}

std::optional<Backup> as_backup(const std::filesystem::path& file, const std::filesystem::path& record_file) {
    const std::string name = file.filename().string();
    const std::string stem = record_file.stem().string() + "-";
    const std::string extension = record_file.extension().string();
    if (!name.starts_with(stem)) {
        return std::nullopt;
    }
    const std::string rest = name.substr(stem.size());
    static const std::regex shape{R"((\d{4}-\d{2}-\d{2})-(\d{2})(\d{2})([^-]*)(-\d+)?)"};
    std::smatch parts;
    if (!std::regex_match(rest, parts, shape) || parts[4].str() != extension) {
        return std::nullopt;
    }
    return Backup{file, parts[1].str(), parts[2].str() + ":" + parts[3].str()};
}

}  // namespace store_detail

namespace {

constexpr std::size_t days_kept = 7;
constexpr std::size_t months_kept = 12;

std::string month_of(const Backup& backup) {
    return backup.day.substr(0, std::string_view{"2026-07"}.size());
}

/// Those that nobody will miss, of a list with the newest first.
std::vector<Backup> outlived(const std::vector<Backup>& all) {
    std::set<std::string> days;
    std::set<std::string> months;
    std::vector<Backup> gone;
    for (const auto& backup : all) {
        const bool first_of_day = days.size() < days_kept && days.insert(backup.day).second;
        const bool first_of_month = months.size() < months_kept && months.insert(month_of(backup)).second;
        if (!first_of_day && !first_of_month) {
            gone.push_back(backup);
        }
    }
    return gone;
}

}  // namespace

std::vector<Backup> backups_in(const std::filesystem::path& folder,
                               const std::filesystem::path& record_file) {
    std::vector<Backup> all;
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator{folder, none}) {
        const auto backup = store_detail::as_backup(entry.path(), record_file);
        // A link on a stick must not choose a file of this machine.
        if (backup && std::filesystem::is_regular_file(entry.symlink_status(none))) {
            all.push_back(*backup);
        }
    }
    std::sort(all.begin(), all.end(), [](const Backup& a, const Backup& b) { return b.file < a.file; });
    return all;
}

std::filesystem::path backup_folder_of(const std::filesystem::path& record_file) {
    return record_file.parent_path() / "backups";
}

Result<std::optional<std::filesystem::path>> back_up_today(Store& store, const std::filesystem::path& folder,
                                                           const Clock& clock) {
    const auto there = backups_in(folder, store.file());
    const std::string today = local_date(clock.wall_now());
    if (std::any_of(there.begin(), there.end(), [&](const Backup& kept) { return kept.day == today; })) {
        return std::optional<std::filesystem::path>{};
    }
    WF_TRY(auto made, store.back_up(folder));
    for (const auto& backup : outlived(backups_in(folder, store.file()))) {
        if (backup.file != made) {
            std::error_code ignored;  // what cannot be removed today is tried again tomorrow
            std::filesystem::remove(backup.file, ignored);
        }
    }
    return std::optional{std::move(made)};
}

}  // namespace wetfront
