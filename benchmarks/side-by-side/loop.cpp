// The tandem and the single server as event loops in C++: the same heap, the same steps and the same numbers as the loops in C#
// (benchmarks/BenchSim.Benchmarks/Engine). Built and run by side_by_side.py; prints model,program,seconds,result.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <deque>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

namespace {

struct Entry {
    double time;
    std::int64_t number;
    int what;
    bool precedes(const Entry& other) const { return time < other.time || (time == other.time && number < other.number); }
};

class EventHeap {
public:
    bool empty() const { return entries_.empty(); }

    void push(double time, int what) {
        const Entry entry{time, sequence_++, what};
        std::size_t at = entries_.size();
        entries_.push_back(entry);
        while (at > 0) {
            const std::size_t parent = (at - 1) >> 2;
            if (!entry.precedes(entries_[parent])) break;
            entries_[at] = entries_[parent];
            at = parent;
        }
        entries_[at] = entry;
    }

    Entry pop() {
        const Entry top = entries_[0];
        const Entry last = entries_.back();
        entries_.pop_back();
        const std::size_t count = entries_.size();
        std::size_t at = 0;
        while (true) {
            std::size_t child = (at << 2) + 1;
            if (child >= count) break;
            const std::size_t end = std::min(child + 4, count);
            std::size_t least = child;
            for (++child; child < end; ++child)
                if (entries_[child].precedes(entries_[least])) least = child;
            if (!entries_[least].precedes(last)) break;
            entries_[at] = entries_[least];
            at = least;
        }
        if (count > 0) entries_[at] = last;
        return top;
    }

private:
    std::vector<Entry> entries_;
    std::int64_t sequence_ = 0;
};

constexpr int kEntities = 150;
constexpr int kStages = 4;
constexpr int kCapacities[kStages] = {8, 60, 30, 40};

class Tandem {
public:
    explicit Tandem(const std::string& file) {
        std::ifstream in(file);
        int units;
        double days[kStages];
        while (in >> units >> days[0] >> days[1] >> days[2] >> days[3]) {
            units_.push_back(units);
            for (int i = 0; i < kStages; ++i) days_[i].push_back(days[i]);
        }
    }

    double play_all() {
        double sum = 0;
        for (std::size_t offset = 0; offset < units_.size(); offset += kEntities) sum += play(offset);
        return sum;
    }

private:
    double play(std::size_t offset) {
        offset_ = offset;
        double sum = 0;
        for (int e = 0; e < kEntities; ++e) {
            stage_[e] = -1;
            heap_.push(0.8 * e, e);
        }
        while (!heap_.empty()) {
            const Entry event = heap_.pop();
            now_ = event.time;
            const int e = event.what;
            const int next = stage_[e] + 1;
            if (next < kStages) {
                lines_[next].push_back(e);
                serve(next);
            } else {
                sum += now_ - 0.8 * e;
                release(next - 1, e);
            }
        }
        return sum;
    }

    void serve(int stage) {
        auto& line = lines_[stage];
        while (!line.empty()) {
            const int e = line.front();
            const int need = wanted(e, stage);
            if (held_[stage] + need > kCapacities[stage]) return;
            line.pop_front();
            held_[stage] += need;
            stage_[e] = stage;
            heap_.push(now_ + days_[stage][offset_ + e], e);
            if (stage > 0) release(stage - 1, e);
        }
    }

    void release(int stage, int e) {
        held_[stage] -= wanted(e, stage);
        serve(stage);
    }

    int wanted(int e, int stage) const { return std::min(units_[offset_ + e], kCapacities[stage]); }

    std::vector<int> units_;
    std::vector<double> days_[kStages];
    std::deque<int> lines_[kStages];
    int held_[kStages] = {0, 0, 0, 0};
    int stage_[kEntities] = {};
    EventHeap heap_;
    std::size_t offset_ = 0;
    double now_ = 0;
};

struct ExponentialStream {
    std::uint64_t state;
    double mean;
    double next() {
        std::uint64_t z = state += 0x9E3779B97F4A7C15u;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
        z ^= z >> 31;
        return -std::log(static_cast<double>((z >> 11) + 1) * (1.0 / 9007199254740992.0)) * mean;
    }
};

double single_server() {
    constexpr int kCustomers = 20000, kComing = 0, kLeaving = 1;
    ExponentialStream gaps{1, 1.25}, services{2, 1};
    EventHeap heap;
    std::deque<double> line;
    double sum = 0;
    int came = 0;
    heap.push(gaps.next(), kComing);
    while (!heap.empty()) {
        const Entry event = heap.pop();
        const double now = event.time;
        if (event.what == kComing) {
            line.push_back(now);
            if (line.size() == 1) heap.push(now + services.next(), kLeaving);
            if (++came < kCustomers) heap.push(now + gaps.next(), kComing);
        } else {
            sum += now - line.front();
            line.pop_front();
            if (!line.empty()) heap.push(now + services.next(), kLeaving);
        }
    }
    return sum;
}

template <class Play>
void time_best(const char* model, Play play) {
    double best = 1e9, answer = 0;
    for (int i = 0; i < 80; ++i) {
        const auto start = std::chrono::steady_clock::now();
        answer = play();
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
    std::printf("%s,loop in C++,%.9g,%.17g\n", model, best, answer);
}

}  // namespace

int main(int, char** argv) {
    Tandem tandem(std::string(argv[1]) + "/tandem.txt");
    time_best("tandem", [&] { return tandem.play_all(); });
    time_best("M/M/1", single_server);
}
