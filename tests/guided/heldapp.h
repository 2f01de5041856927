// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProcess>
#include <QString>

/** The app in a session and folders of its own, told by a pipe what to do. The first trouble is kept, and nothing is done after it. */
class HeldApp {
public:
    /// Everything it can write lies in the folder.
    HeldApp(const QString& program, const QString& folder);
    ~HeldApp();
    HeldApp(const HeldApp&) = delete;
    HeldApp& operator=(const HeldApp&) = delete;

    [[nodiscard]] qint64 process() const { return m_process; }
    /// Waits until it is done.
    void perform(const QByteArray& deed);
    /// Does not wait: who locks may not live to say so.
    void send(const QByteArray& deed);
    /// What an item of the page that shows says.
    [[nodiscard]] QByteArray textOf(const QByteArray& name);
    /// Ends it at once, as the system does with a process that it needs the memory of.
    void kill();
    /// Waits until that page has been drawn.
    void awaitPage(const QByteArray& type);
    /// The recovery code, while its page is shown.
    [[nodiscard]] QByteArray recoveryCode();
    [[nodiscard]] const QString& trouble() const { return m_trouble; }

private:
    [[nodiscard]] QByteArray line();
    [[nodiscard]] QByteArray answer(const QByteArray& question, const QByteArray& head);

    QProcess m_app;
    qint64 m_process = 0;
    QByteArray m_page;
    QString m_trouble;
};
