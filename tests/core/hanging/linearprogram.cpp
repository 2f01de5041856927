// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/hanging/linearprogram.h"

#include <glpk.h>

#include <cmath>
#include <memory>
#include <set>
#include <vector>

using namespace steelyard;

namespace {

/// In kilograms, as the pulls of one way or load at each target, and their squared uncertainty over all targets.
struct Column {
    std::vector<double> pull;
    double u2 = 0;
};

std::optional<Reading> readingOf(const PullCurve& curve, TargetPlace place)
{
    return place == TargetPlace::Bottom ? curve.bottom : place == TargetPlace::Top ? curve.top : place == TargetPlace::Zone ? curve.zone : curve.mean;
}

/// By the engine's curve of that alone; nothing where it is not known.
std::optional<Column> columnOf(const Setup& alone, const HangQuestion& question)
{
    const auto curve = pullCurve(alone, 0);
    if (!curve || !curve->ready)
        return std::nullopt;
    Column column;
    for (const HangTarget& target : question.targets) {
        const auto reading = readingOf(*curve, target.place);
        const double u = asMass(reading->u).si();
        column.pull.push_back(asMass(reading->value).si());
        column.u2 += u * u;
    }
    return column;
}

struct Delete {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};

class Program {
public:
    explicit Program(const HangQuestion& question) : m_question(question), m_problem(glp_create_prob())
    {
        glp_term_out(GLP_OFF);
        glp_set_obj_dir(m_problem.get(), GLP_MIN);
        const int one = row(GLP_FX, 1), most = row(GLP_UP, static_cast<double>(question.mostThingsCount));
        for (const HangTarget& target : question.targets)
            m_missRows.push_back(row(GLP_FX, asMass(target.wanted).si()));
        for (const IronLoad& iron : question.loads) {
            Setup alone;
            alone.bar = iron.load.total - iron.load.plates();
            alone.plates = iron.load.plates();
            alone.uIron = iron.uIron;
            alone.path = iron.path;
            if (const auto column = columnOf(alone, question))
                binary(*column, {one});
        }
        std::set<std::size_t> things;
        for (const WayToHang& way : question.ways)
            things.insert(way.thingIndex);
        std::vector<int> thingRows;
        for (std::size_t i = 0; i < things.size(); ++i)
            thingRows.push_back(row(GLP_UP, 1));
        std::vector<int> pieceRows;
        for (int bit = 0; bit < 3; ++bit)
            pieceRows.push_back(row(GLP_UP, 1));
        for (const WayToHang& way : question.ways) {
            Setup alone;
            alone.path = question.loads.front().path;
            alone.left = way.left;
            alone.right = way.right;
            const auto column = columnOf(alone, question);
            if (!column)
                continue;
            std::vector<int> rows{most, thingRows[static_cast<std::size_t>(std::distance(things.begin(), things.find(way.thingIndex)))]};
            for (int bit = 0; bit < 3; ++bit)
                if (way.takenPieces & (std::uint64_t(1) << bit))
                    rows.push_back(pieceRows[static_cast<std::size_t>(bit)]);
            binary(*column, rows);
        }
        for (std::size_t t = 0; t < question.targets.size(); ++t) {
            // pull − miss = wanted
            const int miss = glp_add_cols(m_problem.get(), 1), square = glp_add_cols(m_problem.get(), 1);
            glp_set_col_bnds(m_problem.get(), miss, GLP_FR, 0, 0);
            glp_set_col_bnds(m_problem.get(), square, GLP_LO, 0, 0);
            glp_set_obj_coef(m_problem.get(), square, 1);
            const int at[] = {0, m_missRows[t]};
            const double minus[] = {0, -1};
            glp_set_mat_col(m_problem.get(), miss, 1, at, minus);
            m_miss.push_back(miss);
            m_square.push_back(square);
            for (double at0 = -80; at0 <= 80; at0 += 8)
                tangent(t, at0);
        }
    }

    std::optional<double> solve()
    {
        for (int turn = 0; turn < 60; ++turn) {
            glp_iocp how;
            glp_init_iocp(&how);
            how.presolve = GLP_ON;
            how.msg_lev = GLP_MSG_OFF;
            how.tm_lim = 3000;
            how.mip_gap = 0;
            if (glp_intopt(m_problem.get(), &how) != 0 || glp_mip_status(m_problem.get()) != GLP_OPT)
                return std::nullopt;
            double below = 0, squares = 0;
            for (std::size_t t = 0; t < m_miss.size(); ++t) {
                const double miss = glp_mip_col_val(m_problem.get(), m_miss[t]);
                below += glp_mip_col_val(m_problem.get(), m_square[t]);
                squares += miss * miss;
            }
            if (squares - below < 1e-7)
                return glp_mip_obj_val(m_problem.get()) + squares - below;
            for (std::size_t t = 0; t < m_miss.size(); ++t)
                tangent(t, glp_mip_col_val(m_problem.get(), m_miss[t]));
        }
        return std::nullopt;
    }

private:
    int row(int kind, double bound)
    {
        const int index = glp_add_rows(m_problem.get(), 1);
        glp_set_row_bnds(m_problem.get(), index, kind, kind == GLP_UP ? 0 : bound, bound);
        return index;
    }
    void binary(const Column& of, const std::vector<int>& rows)
    {
        const int index = glp_add_cols(m_problem.get(), 1);
        glp_set_col_kind(m_problem.get(), index, GLP_BV);
        glp_set_obj_coef(m_problem.get(), index, of.u2);
        std::vector<int> at{0};
        std::vector<double> value{0};
        for (const int r : rows) {
            at.push_back(r);
            value.push_back(1);
        }
        for (std::size_t t = 0; t < of.pull.size(); ++t) {
            at.push_back(m_missRows[t]);
            value.push_back(of.pull[t]);
        }
        glp_set_mat_col(m_problem.get(), index, static_cast<int>(at.size()) - 1, at.data(), value.data());
    }
    /// A square is nowhere below its tangent: s − 2a·miss ≥ −a².
    void tangent(std::size_t t, double a)
    {
        const int index = glp_add_rows(m_problem.get(), 1);
        glp_set_row_bnds(m_problem.get(), index, GLP_LO, -a * a, 0);
        const int at[] = {0, m_square[t], m_miss[t]};
        const double value[] = {0, 1, -2 * a};
        glp_set_mat_row(m_problem.get(), index, 2, at, value);
    }

    const HangQuestion& m_question;
    std::unique_ptr<glp_prob, Delete> m_problem;
    std::vector<int> m_missRows, m_miss, m_square;
};

}

std::optional<double> linearprogram::leastSquares(const HangQuestion& question)
{
    return Program(question).solve();
}
