;;; Loaded by test_emacs.py in an Emacs without a screen whose settings are the documented ones, with the programme
;;; open.  Prints what the editor was told as JSON; applies the fix named $SPOTLINE_FIX and saves.
(require 'json)
(setq make-backup-files nil create-lockfiles nil eglot-confirm-server-initiated-edits nil)

(defun probe-wait (what condition)
  "Wait for CONDITION; end with an error that names WHAT where it never comes."
  (let ((end (+ (float-time) 20)))
    (while (not (funcall condition))
      (when (> (float-time) end)
        (message "There were no %s" what)
        (kill-emacs 1))
      (accept-process-output nil 0.02))))

(defun probe-place (position)
  "Line and column of a POSITION, from 1."
  (save-excursion
    (goto-char position)
    (vector (line-number-at-pos) (1+ (- position (line-beginning-position))))))

(defun probe-found ()
  "All diagnostics, as they are now."
  (flymake-start)
  (flymake-diagnostics))

;; Without a screen there is no command after which the hook would connect by itself.
(run-hooks 'post-command-hook)
(probe-wait "connection" #'eglot-managed-p)
(probe-wait "findings" #'probe-found)
(defvar probe-diagnostics
  (mapcar (lambda (one)
            (list :type (format "%s" (flymake-diagnostic-type one))
                  :text (flymake-diagnostic-text one)
                  :start (probe-place (flymake-diagnostic-beg one))
                  :finish (probe-place (flymake-diagnostic-end one))))
          (flymake-diagnostics)))

;; The fix is chosen by its title from the menu that a key (and not the mouse) brings up.
(defvar probe-offered nil)
(defun probe-choose (_prompt collection &rest _)
  "Choose the fix that was asked for from the COLLECTION."
  (setq probe-offered (mapcar (lambda (one) (substring-no-properties (if (consp one) (car one) one))) collection))
  (seq-find (lambda (title) (string-search (getenv "SPOTLINE_FIX") title)) probe-offered))
(advice-add 'completing-read :override #'probe-choose)
(goto-char (point-min))
(search-forward "sqat")
(backward-char)
(let ((last-nonmenu-event t))
  (call-interactively #'eglot-code-actions))
(save-buffer)
(princ (json-encode (list :diagnostics (vconcat probe-diagnostics) :offered (vconcat probe-offered))))
(eglot-shutdown (eglot-current-server))
(kill-emacs 0)
